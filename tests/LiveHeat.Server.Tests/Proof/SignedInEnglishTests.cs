using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Proof;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Integrity;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Proof;

/// <summary>What is signed does not depend on who asks.</summary>
public sealed class SignedInEnglishTests
{
    /// <summary>
    /// Heats that were certified before there was any other language than English: with a tie decided, one undecided, consequences of every kind, variants, shared and
    /// synchronised sets, tiebreaks and lifts. Whoever changes an English word that is signed breaks them.
    /// </summary>
    [Theory]
    [InlineData("relay")]
    [InlineData("near")]
    [InlineData("variant")]
    [InlineData("apart")]
    [InlineData("lifts")]
    public void A_certificate_of_before_is_sound_in_every_language(string name)
    {
        using var file = new StreamReader(typeof(SignedInEnglishTests).Assembly.GetManifestResourceStream($"certified/{name}.json")!);
        var export = file.ReadToEnd();
        var key = JsonNode.Parse(export)!["certificates"]![0]!["statement"]!["key"]!.GetValue<string>();

        foreach (var language in Tongue.All)
        {
            var report = Tongue.In(language, () => Verification.Check(export, key));
            Assert.True(report.Sound, $"{language}: {string.Join('\n', report.Lines)}");
        }
    }

    [Theory]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    public async Task A_heat_that_is_certified_and_given_out_in_another_language_states_what_it_states_in_English(string language)
    {
        await using var floor = await TestFloor.Open();
        var heat = await floor.Run(lanes: 2);
        await heat[1].Finish(1);
        await heat[1].Finish(2);
        await heat[1].SendOne(heat[1].Tap("tag-made", ("step", 3)));
        await heat[2].SendOne(heat[2].Tap("athlete-working", ("step", 1), ("athlete", 3)));
        await heat.Do(floor.HeadJudge, "take-variant", new { lane = 2, prescription = "scaled", fromStep = 4 });
        await heat.EndAndFreeze();
        foreach (var signer in new[] { floor.Organiser, floor.HeadJudge })
        {
            var command = JsonSerializer.Serialize(new { id = signer.NewId(), command = "certify", head = (await heat.Frame()).SignedHead }, WireJson.Options);
            (await signer.Send(HttpMethod.Post, $"{heat.Path}/commands", new StringContent(command, Encoding.UTF8, "application/json"), ("Accept-Language", language))).Fine();
        }

        var asked = (await floor.HeadJudge.Get($"{heat.Path}/export", ("Accept-Language", language))).Fine().Text;
        var inEnglish = (await floor.HeadJudge.Get($"{heat.Path}/export", ("Accept-Language", "en"))).Fine().Text;
        var shown = (await floor.Visitor().Get($"{heat.Path}/result", ("Accept-Language", language))).Read<ResultTable>();
        var english = (await floor.Visitor().Get($"{heat.Path}/result", ("Accept-Language", "en"))).Read<ResultTable>();
        var certificate = JsonSerializer.Deserialize<HeatExport>(asked, WireJson.Options)!.Certificates.Single();

        Assert.Equal(inEnglish, asked);
        var stated = certificate.Statement.GetProperty("result");
        Assert.Equal(CanonicalJson.Text(JsonSerializer.SerializeToElement(english with { HeadHash = stated.GetProperty("headHash").GetString()! }, WireJson.Options)), CanonicalJson.Text(stated));
        Assert.Contains("tag Bo", stated.GetRawText(), StringComparison.Ordinal);
        Assert.Contains("did the work of Scaled", stated.GetRawText(), StringComparison.Ordinal);
        // The same words are others where they are shown: else this would compare nothing.
        Assert.DoesNotContain(shown.Lanes[0].Splits, split => split.Label == "tag Bo");
        Assert.All([language, "en"], one => Assert.True(Tongue.In(one, () => Verification.Check(asked, certificate.Statement.GetProperty("key").GetString())).Sound));
        Assert.Equal("en", CultureInfo.CurrentUICulture.Name);
    }

    /// <summary>The library may be told otherwise tomorrow, and an organiser may have written what it says in German: what was signed stands.</summary>
    [Fact]
    public void The_workouts_own_names_are_signed_and_not_what_the_library_makes_of_them()
    {
        var own = LibraryTelling.Tell("wall balls", "de");
        var written = Some.Workout();
        var workout = written with { Movements = written.Movements.Select(movement => movement.Id == "wall-ball" ? movement with { Name = own } : movement).ToItems() };
        var heat = HeatScript.Play("start\nlane 1 step 1 done at 0:40", Some.Snapshot(1, workout));

        Assert.NotEqual("wall balls", own);
        Assert.Equal($"10 {own}", ResultMaking.Signed(heat, "", Some.Go)!.Lanes[0].Splits[0].Label);
        Assert.Equal("10 wall balls", ResultMaking.Of(heat, "", Some.Go)!.Lanes[0].Splits[0].Label);
    }
}
