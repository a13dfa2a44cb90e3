using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Live;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Standings;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Wire;

/// <summary>How everything looks as JSON, for the wire and for the ledger.</summary>
public static class WireJson
{
    /// <summary>Fields that came after the first heats were recorded: absent when null, so that what was written before stays the same to the byte.</summary>
    private static readonly HashSet<(Type, string)> CameLater =
    [
        (typeof(Movement), "fullStandard"), (typeof(Workout), "scoring"), (typeof(Workout), "equalWork"), (typeof(ResultTable), "equalWork"), (typeof(Prescription), "tiebreak"),
        (typeof(Prescription), "parts"), (typeof(Prescription), "clock"), (typeof(PrescribedSet), "together"), (typeof(PrescribedSet), "minimumEach"), (typeof(PrescribedSet), "inRound"), (typeof(ResultPart), "score"),
        (typeof(Sheet), "faultWords"), (typeof(SheetLane), "windows"), (typeof(SheetStep), "with"), (typeof(SheetStep), "minimumEach"),
        (typeof(LaneFrame), "score"), (typeof(LaneFrame), "roundsAndReps"), (typeof(SheetLane), "score"), (typeof(ResultLane), "score"), (typeof(ResultLane), "withdrew"), (typeof(ResultLane), "attempts"), (typeof(ResultSplit), "value"), (typeof(StandingsScore), "score"), (typeof(StandingsScore), "roundsAndReps"),
        (typeof(Workout), "penalty"), (typeof(Workout), "consequences"), (typeof(HeatSnapshot), "appealMinutes"), (typeof(HeatFact.Certified), "pending"), (typeof(HeatFact.Frozen), "missing"), (typeof(HeatFact.Frozen), "noTiebreak"), (typeof(HeatCommand.Certify), "pending"), (typeof(HeatFact.CapDecided), "round"), (typeof(HeatCommand.DecideCap), "round"),
        (typeof(HeatFact.Penalised), "part"), (typeof(HeatFact.AppealDecided), "part"), (typeof(HeatCommand.Penalise), "part"), (typeof(HeatCommand.DecideAppeal), "part"), (typeof(ResultPenalty), "part"), (typeof(ResultAppeal), "part"), (typeof(SheetLane), "parts"),
        (typeof(NearTie), "round"),
        (typeof(Callout), "round"), (typeof(Callout), "worth"), (typeof(Callout), "ahead"), (typeof(Callout), "earlier"), (typeof(Callout), "overall"), (typeof(NotYet), "round"), (typeof(LiveLane), "resting"), (typeof(LiveLane), "turnsAt"),
        (typeof(ProgramList), "message"), (typeof(ProgramList), "screen"), (typeof(CompetitionSetup), "screen"),
        (typeof(TeamSetup), "say"), (typeof(TeamSetup), "athletesSay"), (typeof(TeamSetup), "home"), (typeof(TeamSetup), "facts"),
    ];

    /// <summary>The options in force; read-only.</summary>
    public static readonly JsonSerializerOptions Options = Frozen();

    /// <summary>Adds the wire's manners to other options, such as those of a web host or a hub.</summary>
    public static void Apply(JsonSerializerOptions options)
    {
        options.PropertyNamingPolicy = JsonNamingPolicy.CamelCase;
        options.PropertyNameCaseInsensitive = false;
        options.AllowOutOfOrderMetadataProperties = true;
        options.RespectNullableAnnotations = true;
        options.NumberHandling = JsonNumberHandling.Strict;
        options.Converters.Add(new TextConverter<HeatId>(id => id.Value, text => text.Length > 0 ? new HeatId(text) : null));
        options.Converters.Add(new TextConverter<SeatId>(id => id.Value ?? "", text => new SeatId(text), unknown: new SeatId("")));
        options.Converters.Add(new TextConverter<FactId>(id => id.ToString(), text => FactId.TryParse(text, out var id) ? id : null));
        options.Converters.Add(new LaneNumberConverter());
        options.Converters.Add(new InstantConverter());
        options.Converters.Add(new FactFlagsConverter());
        options.Converters.Add(new ItemsConverterFactory());
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false));
        options.TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { NameCases, LeaveOut } };
    }

    /// <summary>A fact as the ledger keeps it, before it is made canonical.</summary>
    public static string Write(HeatFact fact) => JsonSerializer.Serialize(fact, Options);

    /// <summary>A fact from the ledger.</summary>
    /// <exception cref="JsonException">The text is no fact.</exception>
    public static HeatFact ReadFact(string json) => Read(() => JsonSerializer.Deserialize<HeatFact>(json, Options));

    /// <summary>A tap as a phone sent it.</summary>
    /// <exception cref="JsonException">It is no floor fact.</exception>
    public static HeatFact.Floor ReadTap(JsonElement json) => Read(() => json.Deserialize<HeatFact.Floor>(Options));

    /// <summary>A command as somebody sent it.</summary>
    /// <exception cref="JsonException">It is no command.</exception>
    public static HeatCommand ReadCommand(JsonElement json) => Read(() => json.Deserialize<HeatCommand>(Options));

    private static T Read<T>(Func<T?> read)
        where T : class
    {
        try
        {
            return read() ?? throw new JsonException(WireWords.Missing);
        }
        catch (Exception wrong) when (wrong is NotSupportedException or ArgumentException or InvalidOperationException)
        {
            // The library says so of a case without its name, and of half a surrogate pair.
            throw new JsonException(WireWords.NoCase, wrong);
        }
    }

    private static JsonSerializerOptions Frozen()
    {
        var options = new JsonSerializerOptions();
        Apply(options);
        options.MakeReadOnly();
        return options;
    }

    private static void LeaveOut(JsonTypeInfo type)
    {
        foreach (var property in type.Properties.Where(property => CameLater.Contains((type.Type, property.Name))))
        {
            property.ShouldSerialize = (_, value) => value is not null;
        }
    }

    private static void NameCases(JsonTypeInfo type)
    {
        var (field, table) = type.Type switch
        {
            var t when t == typeof(HeatFact) => ("fact", WireNames.Facts),
            var t when t == typeof(HeatFact.Floor) => ("fact", [.. WireNames.Facts.Where(pair => pair.Type.IsAssignableTo(typeof(HeatFact.Floor)))]),
            var t when t == typeof(HeatCommand) => ("command", WireNames.Commands),
            var t when t == typeof(RelayOrder) => ("kind", WireNames.Orders),
            var t when t == typeof(ScoringRule) => ("kind", WireNames.Scorings),
            _ => ("", []),
        };
        if (field.Length == 0)
        {
            return;
        }

        type.PolymorphismOptions = new JsonPolymorphismOptions
        {
            TypeDiscriminatorPropertyName = field,
            UnknownDerivedTypeHandling = JsonUnknownDerivedTypeHandling.FailSerialization,
        };
        foreach (var (derived, name) in table)
        {
            type.PolymorphismOptions.DerivedTypes.Add(new JsonDerivedType(derived, name));
        }
    }
}
