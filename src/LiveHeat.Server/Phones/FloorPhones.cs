using System.Collections.Concurrent;
using LiveHeat.Contracts.Phones;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Server.Access;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Phones;

/// <summary>What the phones on the floor said of themselves. Kept in memory only: it decides nothing.</summary>
internal sealed class FloorPhones(Timebase time)
{
    /// <summary>A phone that has said nothing for so long is offline, whatever its connection seems to be.</summary>
    private const int SilenceMs = 12_000;

    private const int MostInText = 40;

    private readonly ConcurrentDictionary<string, Phone> phones = new();

    /// <summary>Raised when a phone came, went or told something new.</summary>
    public event Action? Changed;

    public void Connected(SignedIn who, string connection)
    {
        if (who is { Role: Role.Judge, Lane: { } lane })
        {
            phones[who.Id] = new Phone(who, lane, connection, time.Now, phones.GetValueOrDefault(who.Id)?.Status);
            Changed?.Invoke();
        }
    }

    public void Gone(SignedIn who, string connection)
    {
        if (phones.TryGetValue(who.Id, out var phone) && phone.Connection == connection)
        {
            phones.TryUpdate(who.Id, phone with { Connection = null }, phone);
            Changed?.Invoke();
        }
    }

    public void Told(SignedIn who, string connection, PhoneStatus? status)
    {
        if (who.Lane is { } lane && status is not null)
        {
            phones[who.Id] = new Phone(who, lane, connection, time.Now, Tidy(status, lane));
            Changed?.Invoke();
        }
    }

    /// <summary>All phones by lane, the one seen last first.</summary>
    public IReadOnlyList<PhoneSeen> All() =>
    [
        .. phones.Values.OrderBy(phone => phone.Lane).ThenByDescending(phone => phone.LastSeen)
            .Select(phone => new PhoneSeen(phone.Who.Id, phone.Who.Name, phone.Lane, Online(phone), phone.LastSeen, phone.Status)),
    ];

    /// <summary>What phones of a heat are known to hold and have not sent; empty when nothing is missing.</summary>
    public Items<MissingTaps> Missing(HeatId heat, IReadOnlySet<string> seated) => phones.Values
        .Where(phone => seated.Contains(phone.Who.Id) && phone.Status is { Unsent: > 0 } status && status.Heat == heat.Value)
        .OrderBy(phone => phone.Lane)
        .Select(phone => new MissingTaps(phone.Lane, phone.Status!.Unsent, phone.LastSeen))
        .ToItems();

    /// <summary>A phone speaks for its own lane, whatever it says; and what it says goes to other people's screens.</summary>
    private static PhoneStatus Tidy(PhoneStatus said, LaneNumber lane) => said with
    {
        Lane = lane,
        Heat = Short(said.Heat),
        Unsent = Math.Max(0, said.Unsent),
        OnPhone = Math.Max(0, said.OnPhone),
        Clock = said.Clock is "good" or "fair" or "poor" ? said.Clock : "none",
        UncertaintyMs = said.UncertaintyMs is { } ms ? Math.Max(0, ms) : null,
        Storage = Short(said.Storage),
        Build = Short(said.Build),
    };

    private static string? Short(string? text) => text is null || text.Length <= MostInText ? text : text[..MostInText];

    private bool Online(Phone phone) => phone.Connection is not null && time.Now - phone.LastSeen < SilenceMs * time.Rate;

    private sealed record Phone(SignedIn Who, LaneNumber Lane, string? Connection, Engine.Timing.Instant LastSeen, PhoneStatus? Status);
}
