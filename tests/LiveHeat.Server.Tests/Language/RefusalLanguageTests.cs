using System.Text.Json;
using LiveHeat.Server.Access;
using LiveHeat.Testing.Hosting;
using LiveHeat.Testing.Language;

namespace LiveHeat.Server.Language;

/// <summary>What is wrong is said in the language of whoever asked; codes, fields and shapes are the same in all.</summary>
public sealed class RefusalLanguageTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public void Everything_that_the_server_can_refuse_has_a_sentence_in_every_language()
    {
        Assert.Empty(TellingFaults.Of(typeof(AccessRefusals).Assembly));
        Assert.True(TellingFaults.Looked(typeof(AccessRefusals).Assembly) > 100, "The server was to refuse many things.");
        Assert.Empty(TranslationFaults.Of(typeof(AccessRefusals).Assembly));
    }

    [Theory]
    [InlineData("en", "The heat still runs. End it first.")]
    [InlineData("de-CH, fr;q=0.5", "Der Lauf ist noch nicht zu Ende. Zuerst beenden.")]
    [InlineData("fr-CA", "La série est encore en cours. La terminer d’abord.")]
    [InlineData("es", "La serie sigue en marcha. Termínela primero.")]
    [InlineData("ja", "The heat still runs. End it first.")]
    public async Task A_command_is_refused_in_the_language_of_its_browser_with_the_same_code(string wish, string sentence)
    {
        var heat = await Floor.Run(lanes: 1);
        using var desk = Floor.Visitor(Floor.Organiser.Cookies);
        desk.Language = wish;

        var answer = await heat.Command(desk, "freeze", new { head = 1 });

        Assert.Equal((409, "heat-still-running", sentence), (answer.Status, answer.Code, answer.Detail));
    }

    [Theory]
    [InlineData("de", "Es gibt keinen Lauf nowhere, oder er ist noch nicht aufgerufen.")]
    [InlineData("fr", "Il n’y a pas de série nowhere, ou elle n’a pas encore été appelée.")]
    [InlineData("es", "No hay ninguna serie nowhere, o todavía no se ha llamado a la pista.")]
    public async Task The_language_of_the_address_goes_before_that_of_the_browser(string language, string sentence)
    {
        using var visitor = Floor.Visitor();
        visitor.Language = "en";

        var answer = await visitor.Get($"/api/heats/nowhere/frame?lang={language}");

        Assert.Equal((404, "no-such-heat", sentence), (answer.Status, answer.Code, answer.Detail));
    }

    [Fact]
    public async Task A_setup_forms_fields_are_told_in_German_beside_their_paths()
    {
        using var desk = Floor.Visitor(Floor.Organiser.Cookies);
        desk.Language = "de";

        var answer = await desk.Put("/api/setup/competition", new { name = "", appealMinutes = 5000 });

        var errors = JsonDocument.Parse(answer.Text).RootElement.GetProperty("errors").EnumerateArray()
            .Select(error => (error.GetProperty("field").GetString(), error.GetProperty("message").GetString()));
        Assert.Equal("bad-setup", answer.Code);
        Assert.Equal(
            [
                ("name", "Der Name des Wettkampfs: Es steht nichts da. Mindestens ein Zeichen schreiben."),
                ("appealMinutes", "Teams können 0 bis 1.440 Minuten nach dem Aushang des Ergebnisses Einspruch erheben."),
            ],
            errors);
    }

    [Fact]
    public async Task A_taps_receipt_is_told_in_Spanish()
    {
        var heat = await Floor.Run(lanes: 2);
        heat[1].Phone.Language = "es";

        var receipts = (await heat[1].Send(heat[1].Done(1, ("lane", 2)), heat[1].Done(1, ("lane", "two")))).Receipts;

        Assert.Equal(
            [
                ("not-your-lane", "Este móvil nunca ha juzgado la calle 2. Enseñe el toque al juez principal."),
                ("unreadable", "No se puede leer este toque: su campo lane no es como debe ser. Enséñeselo al juez principal; queda guardado en el móvil."),
            ],
            receipts.Select(receipt => (receipt.Code, receipt.Detail)));
    }

    [Fact]
    public async Task What_cannot_be_read_says_in_French_where_and_what_was_expected()
    {
        using var desk = Floor.Visitor(Floor.Organiser.Cookies);
        desk.Language = "fr";

        var answer = await desk.Put("/api/setup/heats/h9", new { id = "h9", number = 9, title = "", workout = "w", lanes = new[] { new { lane = 0, team = "t" } } });

        Assert.Equal("unreadable", answer.Code);
        Assert.Matches("^Ce qui a été envoyé ne peut pas être lu\u00a0: l’erreur est au champ lanes\\[0\\].lane \\(ligne 1, caractère \\d+\\)\u00a0: Un couloir est un nombre de 1 à 99. Rien n’a été fait.$", answer.Detail);
    }

    [Fact]
    public async Task Who_may_not_is_told_for_whom_it_is_in_German()
    {
        using var visitor = Floor.Visitor();
        visitor.Language = "de";

        var answer = await visitor.Post("/api/heats/h1/commands", new { command = "end" });

        Assert.Equal((401, "not-signed-in"), (answer.Status, answer.Code));
        Assert.Equal("Das ist nur für: Bahnrichter, Hauptrichter oder Veranstalter. Zuerst anmelden oder mit einem Code beitreten.", answer.Detail);
    }
}
