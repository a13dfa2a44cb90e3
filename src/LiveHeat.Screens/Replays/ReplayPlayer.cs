using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Clock;

namespace LiveHeat.Screens.Replays;

/// <summary>A clock that plays a stretch of time again: at any speed, standing, or set to any instant of it.</summary>
public sealed class ReplayPlayer(TimeProvider time) : ISceneClock
{
    private Instant stoodAt;
    private long since;

    /// <summary>Where the stretch begins.</summary>
    public Instant From { get; private set; }

    /// <summary>Where it ends.</summary>
    public Instant Until { get; private set; }

    /// <summary>It goes on by itself.</summary>
    public bool Playing { get; private set; }

    /// <summary>Milliseconds played a real one.</summary>
    public double Speed { get; private set; } = 1;

    /// <inheritdoc/>
    public double Rate => Playing ? Speed : 0;

    /// <inheritdoc/>
    public int Turn { get; private set; }

    /// <inheritdoc/>
    public Instant Now => Within(Playing ? stoodAt + (long)(time.GetElapsedTime(since).TotalMilliseconds * Speed) : stoodAt);

    /// <inheritdoc/>
    public TimeSpan Since(Instant at) => TimeSpan.FromMilliseconds(Now - at);

    /// <summary>Takes another stretch, or the same one grown longer: it stays where it is, as far as that lies within.</summary>
    public void Load(Instant from, Instant until)
    {
        var now = Now;
        (From, Until) = (from, until);
        Seek(now);
    }

    /// <summary>Goes to an instant; not beyond either end.</summary>
    public void Seek(Instant at) => Set(at, Playing, Speed);

    /// <summary>Goes on; from the beginning when it stands at the end.</summary>
    public void Play() => Set(Now >= Until ? From : Now, true, Speed);

    /// <summary>Stands.</summary>
    public void Pause() => Set(Now, false, Speed);

    /// <summary>Goes on at another speed from where it is.</summary>
    public void SetSpeed(double speed) => Set(Now, Playing, speed);

    private void Set(Instant at, bool playing, double speed)
    {
        (stoodAt, since, Playing, Speed) = (Within(at), time.GetTimestamp(), playing, speed);
        Turn++;
    }

    private Instant Within(Instant at) => at < From ? From : at > Until ? Until : at;
}
