using System.Reflection;
using System.Text.Json;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Standings;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Language;

/// <summary>What is pushed is made once for viewers of all languages: it holds names and ids, and no words.</summary>
public sealed class PushedTests
{
    /// <summary>Every text in a push, each looked at: an id, the name of a person, or what a judge or the organiser typed. A new one belongs here only when it is no sentence of ours.</summary>
    private static readonly string[] NoWords =
    [
        "Callout.Id", "EarlierResult.Division", "EarlierResult.Second", "EarlierResult.Title", "FactId.Outbox", "ForecastFrame.Epoch", "Frame.Epoch", "HeatId.Value", "LaneFrame.Judge", "OverallLead.Division", "OverallLead.Second", "ReadBack.Name", "SeatId.Value", "StartFrame.Id", "TimeTold.By",
    ];

    [Theory]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    public void A_frame_is_the_same_in_every_language(string language)
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 9 done at 5:00.0
            lane 2 step 9 done at 5:00.02
            lane 3 step 3 done at 2:00
            lane 3 stopped medical at 2:30
            lane 1 reads back disputed at 5:10
            penalise lane 2 by 5000 ms
            """);
        var placings = LiveOrder.Of(heat);
        string Frame() => JsonSerializer.Serialize(FrameMaking.Of(heat, placings, [], "e", Some.Go + 310_000), WireJson.Options);

        Assert.Equal(Tongue.InEnglish(Frame), Tongue.In(language, Frame));
    }

    [Fact]
    public void No_text_is_pushed_but_names_and_ids() =>
        Assert.Equal(NoWords, Texts(typeof(Frame), []).Concat(Texts(typeof(ForecastFrame), [])).Distinct().Order(StringComparer.Ordinal));

    private static IEnumerable<string> Texts(Type type, HashSet<Type> seen)
    {
        if (type.IsGenericType)
        {
            return type.GetGenericArguments().SelectMany(inner => Texts(inner, seen));
        }

        return type.Namespace?.StartsWith("LiveHeat", StringComparison.Ordinal) != true || type.IsEnum || !seen.Add(type)
            ? []
            : type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0).SelectMany(property =>
                property.PropertyType == typeof(string) ? [$"{type.Name}.{property.Name}"] : Texts(property.PropertyType, seen));
    }
}
