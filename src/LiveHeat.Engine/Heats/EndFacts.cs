namespace LiveHeat.Engine.Heats;

public abstract partial record HeatFact
{
    /// <summary>The heat's facts are closed for review up to a sequence. Later floor facts are shown as late.</summary>
    public sealed record Frozen : Desk
    {
        /// <summary>The sequence its author saw and closes.</summary>
        public required long Head { get; init; }

        /// <summary>Why it was frozen over taps that had not arrived; null when none were missing.</summary>
        public string? Over { get; init; }
    }

    /// <summary>One signature on the result. Organiser and head judge, naming the same head, certify it.</summary>
    public sealed record Certified : Desk
    {
        /// <summary>The sequence its author saw; signatures themselves do not count.</summary>
        public required long Head { get; init; }

        /// <summary>Lanes signed as pending: an appeal was open, and a later revision settles them. Null when there was none.</summary>
        public Items<LaneNumber>? Pending { get; init; }
    }

    /// <summary>A frozen or certified heat is open for review again, as a new revision.</summary>
    public sealed record Reopened : Told;
}
