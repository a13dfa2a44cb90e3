namespace LiveHeat.Server.Access;

/// <summary>Makes whoever guesses codes and passphrases wait: each device for its own wrong tries, and everybody less patiently while many are wrong.</summary>
/// <remarks>
/// A right code is never made to wait for what others did, so a device that was never seen before is always heard at once; whoever throws its
/// cookie away before each guess is slowed only by <see cref="tries"/>. Against that stand the forty bits of a code: all that the server will look
/// at in the twelve hours that a code is good (200 a second) has a chance of one in four thousand to hit one of thirty codes. Never by network
/// address: sixty phones of a venue share one. In memory only; a restart forgives.
/// </remarks>
internal sealed class WrongTries(TimeProvider time, ILogger<WrongTries> log)
{
    /// <summary>Wrong tries that a device has free: typing errors.</summary>
    public const int Free = 5;

    /// <summary>Wrong tries a minute, of all devices together, above which nobody has any free.</summary>
    public const int Crowd = 60;

    private const int MostDevices = 10_000;
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan Memory = TimeSpan.FromMinutes(15);

    private readonly Lock turn = new();
    private readonly Dictionary<string, Device> devices = [];
    private readonly Leaking wrong = new(Crowd, Crowd / 60.0);
    private readonly Leaking tries = new(10_000, 200);
    private bool crowded;

    /// <summary>Asks to try. Null: now, and the try counts as wrong until <see cref="Forgive"/>; otherwise how long to wait first.</summary>
    public TimeSpan? Begin(string device)
    {
        lock (turn)
        {
            var now = time.GetUtcNow();
            if (Known(device, now) is { } known && now < known.WaitsUntil)
            {
                return known.WaitsUntil - now;
            }

            if (tries.IsFull(now))
            {
                return TimeSpan.FromSeconds(1);
            }

            tries.Add(now);
            wrong.Add(now);
            Notice(now);
            var count = (Known(device, now)?.Wrong ?? 0) + 1;
            devices[device] = new Device(count, now, now + Wait(count - (crowded ? 0 : Free)));
            return null;
        }
    }

    /// <summary>The try was right, or no guess: as if it had not been. A right one also forgives the wrong ones before it.</summary>
    public void Forgive(string device)
    {
        lock (turn)
        {
            var now = time.GetUtcNow();
            devices.Remove(device);
            wrong.TakeBack(now);
            tries.TakeBack(now);
        }
    }

    /// <summary>The try was wrong: how long the device has to wait before the next; null when it may at once.</summary>
    public TimeSpan? AfterWrong(string device)
    {
        lock (turn)
        {
            var now = time.GetUtcNow();
            return Known(device, now) is { } known && now < known.WaitsUntil ? known.WaitsUntil - now : null;
        }
    }

    /// <summary>2, 4, 8 seconds and so on up to a minute, for each wrong try above those that are free.</summary>
    private static TimeSpan Wait(int above) =>
        above <= 0 ? TimeSpan.Zero : TimeSpan.FromSeconds(Math.Min(LongestWait.TotalSeconds, Math.Pow(2, Math.Min(above, 10))));

    private Device? Known(string device, DateTimeOffset now) =>
        devices.TryGetValue(device, out var known) && now - known.LastAt < Memory ? known : null;

    private void Notice(DateTimeOffset now)
    {
        var isCrowded = wrong.IsFull(now);
        if (isCrowded && !crowded)
        {
            log.LogWarning("More than {Count} wrong codes or passphrases came within a minute: somebody may be guessing", Crowd);
        }

        crowded = isCrowded;
        if (devices.Count >= MostDevices)
        {
            foreach (var old in devices.OrderBy(one => one.Value.LastAt).Take(MostDevices / 2).ToList())
            {
                devices.Remove(old.Key);
            }
        }
    }

    private sealed record Device(int Wrong, DateTimeOffset LastAt, DateTimeOffset WaitsUntil);

    /// <summary>A count that leaks away at a steady rate.</summary>
    private sealed class Leaking(double capacity, double perSecond)
    {
        private double level;
        private DateTimeOffset at;

        public bool IsFull(DateTimeOffset now) => Level(now) >= capacity;

        public void Add(DateTimeOffset now) => level = Level(now) + 1;

        public void TakeBack(DateTimeOffset now) => level = Math.Max(0, Level(now) - 1);

        private double Level(DateTimeOffset now)
        {
            level = Math.Max(0, level - (Math.Max(0, (now - at).TotalSeconds) * perSecond));
            at = now;
            return level;
        }
    }
}
