using LiveHeat.Contracts.Forecasts;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Phones;

namespace LiveHeat.Contracts;

/// <summary>What the hub pushes to a screen. A push may be lost: the newest frame can always be asked for.</summary>
public interface IHeatWatcher
{
    /// <summary>A whole state of the heat watched.</summary>
    Task FrameReady(Frame frame);

    /// <summary>What is foretold of the heat watched and what is worth saying, to whoever watches that.</summary>
    Task ForecastReady(ForecastFrame forecast);

    /// <summary>The list of heats or the current heat changed: read it again.</summary>
    Task ProgramChanged();

    /// <summary>All phones, to whoever watches phones.</summary>
    Task PhonesReady(IReadOnlyList<PhoneSeen> phones);
}

/// <summary>What a screen may call on the hub.</summary>
public interface IHeatHub
{
    /// <summary>Watches one heat, or "current"; answers with its newest frame. Anybody.</summary>
    Task<Frame?> Watch(string heat);

    /// <summary>Watches the forecast of the heat watched; answers with the newest, null before the call. Anybody.</summary>
    Task<ForecastFrame?> WatchForecast();

    /// <summary>The four-timestamp exchange. Anybody.</summary>
    /// <param name="sent">The caller's clock, milliseconds; not used by the server.</param>
    Task<ClockAnswer> Exchange(double sent);

    /// <summary>A phone tells how it is. A lane's judge.</summary>
    Task ReportPhone(PhoneStatus status);

    /// <summary>Watches the phones. Organiser and head judge.</summary>
    Task<IReadOnlyList<PhoneSeen>> WatchPhones();
}

/// <summary>The server's half of a clock exchange.</summary>
/// <param name="Received">T2, milliseconds with fraction on the server's timebase.</param>
/// <param name="Sent">T3, likewise.</param>
/// <param name="Process">Names the timebase: another process, another timebase.</param>
/// <param name="Rate">Server milliseconds per real millisecond; 1 but in a fast rehearsal.</param>
public sealed record ClockAnswer(double Received, double Sent, string Process, double Rate);
