namespace LiveHeat.Engine.Heats;

/// <summary>What became of an appeal.</summary>
public enum AppealOutcome
{
    /// <summary>The result stands.</summary>
    NoChange,

    /// <summary>Time is given or taken.</summary>
    Seconds,

    /// <summary>Reps are given or taken.</summary>
    Reps,

    /// <summary>The team does the work again in another heat.</summary>
    Rerun,
}

public abstract partial record HeatFact
{
    /// <summary>The team is put out of the workout: no place. Its facts stay.</summary>
    public sealed record Disqualified : LaneDesk;

    /// <summary>A member of the team appeals against the lane's result.</summary>
    public sealed record AppealFiled : LaneDesk
    {
        /// <summary>Who, by name.</summary>
        public required string Member { get; init; }

        /// <summary>What about.</summary>
        public required string Grounds { get; init; }

        /// <summary>True: after the window, let in by the head judge; <see cref="LaneDesk.Reason"/> says why.</summary>
        public bool Late { get; init; }
    }

    /// <summary>The head judge decides an appeal.</summary>
    public sealed record AppealDecided : About
    {
        /// <summary>What came of it.</summary>
        public required AppealOutcome Outcome { get; init; }

        /// <summary>With seconds: onto the time, milliseconds; negative helps the team. Otherwise 0.</summary>
        public int AddMs { get; init; }

        /// <summary>With reps: off the worth done; negative helps the team. Otherwise 0.</summary>
        public int Reps { get; init; }

        /// <summary>With a rerun: the heat whose result counts. Otherwise null.</summary>
        public HeatId? InHeat { get; init; }

        /// <summary>With seconds or reps, of work whose parts are scored apart, the part in which they count: see <see cref="Cost.Part"/>.</summary>
        public int? Part { get; init; }
    }
}

/// <summary>An appeal that stands.</summary>
/// <param name="Filed">Who, what about, when.</param>
/// <param name="Decided">What came of it; null while it is open.</param>
public sealed record Appeal(HeatFact.AppealFiled Filed, HeatFact.AppealDecided? Decided)
{
    /// <summary>Nobody has decided it.</summary>
    public bool Open => Decided is null;
}
