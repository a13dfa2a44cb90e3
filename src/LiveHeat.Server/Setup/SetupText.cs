using System.Text.RegularExpressions;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Server.Access;

namespace LiveHeat.Server.Setup;

/// <summary>The ids, names and other text of the setup. A field that was left out of the JSON is null here, whatever its type says.</summary>
internal static partial class SetupText
{
    private const int MostInText = 2000;

    public static IEnumerable<FieldError> Id(string field, string? id)
    {
        if (id is null || !IdForm().IsMatch(id))
        {
            yield return new(field, SetupRefusals.NoId(id));
        }
    }

    /// <param name="what">"The team's name".</param>
    public static IEnumerable<FieldError> Name(string field, Telling what, string? name)
    {
        if (PlainText.Wrong(what, name) is { } wrong)
        {
            yield return new(field, wrong);
        }
    }

    /// <summary>Text that may be empty and may have line breaks, but must be there.</summary>
    public static IEnumerable<FieldError> Text(string field, Telling what, string? text)
    {
        if (text is null)
        {
            yield return new(field, SetupRefusals.TextMissing(what));
        }
        else if (text.Length > MostInText)
        {
            yield return new(field, AccessRefusals.TooLong(text.Length, what, MostInText));
        }
        else if (text.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t')))
        {
            yield return new(field, SetupRefusals.TextHasControl(what));
        }
    }

    public static CompetitionSetup Tidy(this CompetitionSetup competition) => competition with { Name = competition.Name?.Trim()! };

    public static DivisionSetup Tidy(this DivisionSetup division) => division with { Name = division.Name?.Trim()! };

    public static TeamSetup Tidy(this TeamSetup team) => team with
    {
        Name = team.Name?.Trim()!,
        Athletes = team.Athletes.Select(athlete => athlete.Trim()).ToItems(),
        Say = Told(team.Say),
        Home = Told(team.Home),
        AthletesSay = team.AthletesSay?.Any(say => !string.IsNullOrWhiteSpace(say)) == true ? team.AthletesSay.Value.Select(say => say.Trim()).ToItems() : null,
        Facts = team.Facts?.Where(fact => !string.IsNullOrWhiteSpace(fact)).Select(fact => fact.Trim()).ToItems() is { Count: > 0 } facts ? facts : null,
    };

    /// <summary>Nothing written is nothing told.</summary>
    private static string? Told(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    public static HeatSetup Tidy(this HeatSetup heat) => heat with { Title = heat.Title?.Trim()!, Lanes = heat.Lanes.OrderBy(lane => lane.Lane).ToItems() };

    public static Workout Tidy(this Workout workout) => workout with
    {
        Name = workout.Name?.Trim()!,
        Movements = workout.Movements.Select(movement => movement with
        {
            Name = movement.Name?.Trim()!,
            Standard = movement.Standard?.Trim()!,
            Faults = movement.Faults.Select(fault => fault.Trim()).ToItems(),
            FullStandard = movement.FullStandard?.Tidy(),
        }).ToItems(),
    };

    [GeneratedRegex("^[a-z0-9-]{1,40}\\z", RegexOptions.CultureInvariant)]
    private static partial Regex IdForm();
}
