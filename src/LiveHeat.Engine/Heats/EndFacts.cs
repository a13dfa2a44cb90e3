namespace LiveHeat.Engine.Heats;

public abstract partial record HeatFact
{
    /// <summary>The heat's facts are closed for review up to a sequence. Later floor facts are shown as late.</summary>
    public sealed record Frozen : Desk
    {
        /// <summary>The sequence its author saw and closes.</summary>
        public required long Head { get; init; }

        /// <summary>Why it was frozen over what was missing; null when nothing was. Heats of before <see cref="Missing"/> also tell here, in English, what was.</summary>
        public string? Over { get; init; }

        /// <summary>Taps that were on phones and had not arrived; null when there were none.</summary>
        public Items<MissingTaps>? Missing { get; init; }

        /// <summary>Lanes whose tiebreak set was done at a time nobody knew; null when there were none.</summary>
        public Items<LaneNumber>? NoTiebreak { get; init; }
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
