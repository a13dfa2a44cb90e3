using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Heats;

/// <summary>A lane: what it has to do and where it is.</summary>
/// <param name="Sheet">From the sheet.</param>
/// <param name="State">From the frame.</param>
public sealed record LaneView(SheetLane Sheet, LaneFrame State)
{
    /// <summary>Its number on the floor.</summary>
    public LaneNumber Lane => Sheet.Lane;

    /// <summary>Lane time at the moment it is drawn, in milliseconds; left out: nothing but taps is known.</summary>
    public Func<long?>? Now { get; init; }

    /// <summary>Where it is by its taps and by the clock.</summary>
    public LanePlace Place => LanePlace.Of(Sheet, State, Now?.Invoke());

    /// <summary>The step that is open, while resting the one that will be; null when all is done.</summary>
    public SheetStep? OpenStep => Find(Place.Open);

    /// <summary>Heat time until which nobody works; null while somebody does.</summary>
    public long? RestsUntilMs => State.Status is LaneStatus.Working or LaneStatus.Held && Place is { Resting: true, TurnsMs: { } turnsMs } ? turnsMs + State.CreditMs : null;

    /// <summary>How many rounds there are.</summary>
    public int Rounds => Sheet.ExpectedSteps is not null ? 0 : Sheet.Steps.Select(step => step.Round ?? 0).DefaultIfEmpty(0).Max();

    /// <summary>The score when all is done.</summary>
    public int WorthOfAll => Sheet.Steps.Sum(step => step.Worth);

    /// <summary>The step of that number; null when there is none.</summary>
    public SheetStep? Find(int step) => step >= 1 && step <= Sheet.Steps.Count ? Sheet.Steps[step - 1] : null;

    /// <summary>An athlete's name by number; empty when the team works as one.</summary>
    public string NameOf(int athlete) => athlete >= 1 && athlete <= Sheet.Athletes.Count ? Sheet.Athletes[athlete - 1] : "";

    /// <summary>Who does a step, all who do it at the same moment; empty when the team works as one.</summary>
    public string NamesOf(SheetStep step) => string.Join(" + ", (step.With ?? []).Prepend(step.Athlete).Select(NameOf).Where(name => name.Length > 0));

    /// <summary>Who works now; empty when the team works as one, rests, or is through.</summary>
    public string Worker => OpenStep is { } step && RestsUntilMs is null ? NamesOf(step) : "";

    /// <summary>Who is tagged next, or works in the next round by the clock; empty when nobody is.</summary>
    public string Next => RestsUntilMs is not null ? NextAfterRest : NextByTag is { Length: > 0 } tagged ? tagged : NextByClock;

    private string NextAfterRest => OpenStep is { } step ? NamesOf(step) : "";

    private string NextByTag => Sheet.Steps.Skip(Place.Open - 1).FirstOrDefault(step => step.Kind == StepKind.Tag) is { To: { } to } ? NameOf(to) : "";

    private string NextByClock => Sheet.Windows is not null && OpenStep is { } open && Sheet.Steps.Skip(open.Step).FirstOrDefault(step => step.Athlete != open.Athlete) is { } next ? NamesOf(next) : "";
}
