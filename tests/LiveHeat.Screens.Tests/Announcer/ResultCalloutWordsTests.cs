using System.Globalization;
using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Announcer;

/// <summary>Results of earlier heats, and what they make of the standings, as sentences.</summary>
public sealed class ResultCalloutWordsTests : IDisposable
{
    private static readonly CalloutWords Words = new();
    private readonly CultureInfo before = CultureInfo.CurrentUICulture;

    private static EarlierResult Won(bool official = true, params string[] teams) => new(new HeatId("h1"), "Heat 12", "Open", teams.Length == 0 ? ["Harbour Anvils"] : [.. teams], official, 312_300, 80);

    public void Dispose() => CultureInfo.CurrentUICulture = before;

    [Theory]
    [InlineData("en", "Heat 12, Open: Harbour Anvils win with 5:12.3, 4.2 s ahead of Quarry Lights.", "the result is signed")]
    [InlineData("es", "Heat 12, Open: Harbour Anvils ganan con 5:12,3, 4,2 s por delante de Quarry Lights.", "el resultado está firmado")]
    [InlineData("fr", "Heat 12, Open : Harbour Anvils gagnent avec 5:12,3, 4,2 s devant Quarry Lights.", "le résultat est signé")]
    [InlineData("de", "Heat 12, Open: Harbour Anvils gewinnen mit 5:12,3, 4,2 s vor Quarry Lights.", "das Ergebnis ist unterschrieben")]
    public void A_signed_result_says_who_won_and_by_how_much(string language, string sentence, string reason) =>
        Assert.Equal((sentence, reason), Told(language, CalloutKind.HeatResult, Won() with { Second = "Quarry Lights", AheadMs = 4_200 }));

    [Theory]
    [InlineData("en", "Not official yet. Heat 12, Open: Harbour Anvils win with 5:12.3.", "provisional: it may still change, do not call it final")]
    [InlineData("es", "Aún no oficial. Heat 12, Open: Harbour Anvils ganan con 5:12,3.", "provisional: aún puede cambiar, no lo dé por definitivo")]
    [InlineData("fr", "Pas encore officiel. Heat 12, Open : Harbour Anvils gagnent avec 5:12,3.", "provisoire : il peut encore changer, ne pas l’annoncer comme définitif")]
    [InlineData("de", "Noch nicht offiziell. Heat 12, Open: Harbour Anvils gewinnen mit 5:12,3.", "vorläufig: es kann sich noch ändern, nicht als endgültig ansagen")]
    public void What_may_still_change_begins_with_that(string language, string sentence, string reason) => Assert.Equal((sentence, reason), Told(language, CalloutKind.HeatResult, Won(official: false)));

    [Theory]
    [InlineData("en", false, "Heat 12, Open: Harbour Anvils take the lead of the workout with 5:12.3.")]
    [InlineData("en", true, "Heat 12, Open: Harbour Anvils still lead the workout with 5:12.3.")]
    [InlineData("es", false, "Heat 12, Open: Harbour Anvils se ponen en cabeza de la prueba con 5:12,3.")]
    [InlineData("fr", true, "Heat 12, Open : Harbour Anvils gardent la tête de l’épreuve avec 5:12,3.")]
    [InlineData("de", false, "Heat 12, Open: Harbour Anvils übernehmen die Führung im Workout mit 5:12,3.")]
    public void Who_leads_the_workout_since(string language, bool kept, string sentence) => Assert.Equal(sentence, Told(language, CalloutKind.WorkoutLead, Won() with { Kept = kept }).Sentence);

    [Fact]
    public void Several_share_work_is_told_in_rounds_and_reps_and_one_division_is_not_named()
    {
        Assert.Equal("Heat 12: Harbour Anvils and Quarry Lights share first place with 4 rounds + 12 reps.",
            Told("en", CalloutKind.HeatResult, Won(true, "Harbour Anvils", "Quarry Lights") with { Division = null, Ms = null, RoundsAndReps = new RoundsAndReps(4, 12) }).Sentence);
        Assert.Equal("Heat 12: Harbour Anvils win with 80 reps, 14 reps ahead of Quarry Lights.",
            Told("en", CalloutKind.HeatResult, Won() with { Division = null, Ms = null, Second = "Quarry Lights", AheadWorth = 14 }).Sentence);
    }

    [Theory]
    [InlineData("en", "Heat 12: Harbour Anvils win with 80 reps.")]
    [InlineData("es", "Heat 12: Harbour Anvils ganan con 80 reps.")]
    [InlineData("fr", "Heat 12 : Harbour Anvils gagnent avec 80 rép.")]
    [InlineData("de", "Heat 12: Harbour Anvils gewinnen mit 80 Wdh.")]
    public void A_unit_with_a_full_stop_ends_the_sentence(string language, string sentence) =>
        Assert.Equal(sentence, Told(language, CalloutKind.HeatResult, Won() with { Division = null, Ms = null }).Sentence);

    [Theory]
    [InlineData("en", false, "Open, after 2 workouts: Harbour Anvils take the overall lead with 7 points, 2.5 ahead of Quarry Lights.")]
    [InlineData("en", true, "Open, after 2 workouts: Harbour Anvils still lead overall with 7 points, 2.5 ahead of Quarry Lights.")]
    [InlineData("en", null, "Open, after 2 workouts: Harbour Anvils lead overall with 7 points, 2.5 ahead of Quarry Lights.")]
    [InlineData("es", false, "Open, tras 2 pruebas: Harbour Anvils se ponen en cabeza de la general con 7 puntos, 2,5 por delante de Quarry Lights.")]
    [InlineData("fr", true, "Open, après 2 épreuves : Harbour Anvils gardent la tête du classement général avec 7 points, 2,5 devant Quarry Lights.")]
    [InlineData("de", null, "Open, nach 2 Workouts: Harbour Anvils führen in der Gesamtwertung mit 7 Punkten, 2,5 vor Quarry Lights.")]
    public void Who_leads_over_the_whole_competition(string language, bool? kept, string sentence) =>
        Assert.Equal(sentence, Told(language, Overall() with { Second = "Quarry Lights", Ahead = 2.5m, Kept = kept }).Sentence);

    [Theory]
    [InlineData("en", "Not official yet. After 1 workout: Harbour Anvils and Quarry Lights share the overall lead with 1 point.")]
    [InlineData("es", "Aún no oficial. Tras 1 prueba: Harbour Anvils y Quarry Lights comparten la cabeza de la general con 1 punto.")]
    [InlineData("fr", "Pas encore officiel. Après 1 épreuve : Harbour Anvils et Quarry Lights se partagent la tête du classement général avec 1 point.")]
    [InlineData("de", "Noch nicht offiziell. Nach 1 Workout: Harbour Anvils und Quarry Lights teilen sich die Führung in der Gesamtwertung mit 1 Punkt.")]
    public void Several_share_it_and_what_is_not_signed_says_so(string language, string sentence)
    {
        var (told, reason) = Told(language, new OverallLead(new HeatId("h1"), null, 1, ["Harbour Anvils", "Quarry Lights"], false, 1));

        Assert.Equal(sentence, told);
        Assert.Equal(Told(language, CalloutKind.HeatResult, Won(official: false)).Reason, reason);
    }

    private static OverallLead Overall() => new(new HeatId("h1"), "Open", 2, ["Harbour Anvils"], true, 7);

    private static (string Sentence, string Reason) Told(string language, OverallLead lead) =>
        Told(language, new Callout("id", CalloutKind.OverallLead, 60, Some.Go, CalloutGrounds.Confirmed, []) { Overall = lead });

    private static (string Sentence, string Reason) Told(string language, CalloutKind kind, EarlierResult result) =>
        Told(language, new Callout("id", kind, 60, Some.Go, CalloutGrounds.Confirmed, []) { Earlier = result });

    private static (string Sentence, string Reason) Told(string language, Callout callout)
    {
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);
        return (Plain(Words.Sentence(callout, [], Some.Go)), Plain(Words.Reason(callout, [])));
    }

    private static string Plain(string text) => text.Replace('\u00a0', ' ').Replace('\u202f', ' ');
}
