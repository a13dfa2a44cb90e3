namespace LiveHeat.Engine.Heats;

/// <summary>What a seat is for.</summary>
public enum Duty
{
    /// <summary>The lane's judge: its taps are the lane's.</summary>
    Primary,

    /// <summary>A second pair of eyes: confirms, does not decide.</summary>
    Witness,

    /// <summary>Taps only the finish.</summary>
    Timekeeper,
}

/// <summary>Where an added fact was found.</summary>
public enum Source
{
    /// <summary>A paper scorecard.</summary>
    Paper,

    /// <summary>A recording.</summary>
    Video,
}

/// <summary>Why a team stopped for good.</summary>
public enum StopReason
{
    /// <summary>The team gave up.</summary>
    Withdrew,

    /// <summary>Medical staff, the judge or the athlete stopped for health.</summary>
    Medical,
}
