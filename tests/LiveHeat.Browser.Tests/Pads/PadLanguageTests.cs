using System.Text.RegularExpressions;
using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>The pad speaks the language of its address, else the phone's, and needs no network for it after the first load.</summary>
public sealed class PadLanguageTests(Hall hall) : HallTest(hall)
{
    [Fact]
    public async Task A_phone_s_language_alone_is_fetched_and_kept_and_a_heat_is_judged_in_it_without_network()
    {
        const int Lane = 31;
        var heat = await Hall.Call(QuickWork.Sets(), new Entrant(Lane, "Harbour Anvils", "Joss", "Ilka"));
        var page = await Page(390, 844, phone: true, locale: "fr-CA");
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(new Uri(request.Url).PathAndQuery);
        var phone = new JudgePhone(page, Hall.Site);
        await phone.Join(await Hall.CodeOf(Lane), "Mara");
        await phone.GetReady();
        await heat.RunsSince(1_000);
        await phone.IsAt("heat");
        await phone.IsKept();
        Assert.Equal(["/floor/words/pad.fr.json"], asked.Where(path => path.Contains("/words/pad", StringComparison.Ordinal)).Distinct());
        Assert.DoesNotContain(asked, path => path.Contains("lang=", StringComparison.Ordinal));      // the browser says it in Accept-Language
        Assert.Equal(["/floor/words/pad.fr.json"], await Kept(phone));

        await phone.Browser.SetOfflineAsync(true);
        await page.ReloadAsync();
        await phone.IsAt("heat");
        await Expect(page.Locator("html")).ToHaveAttributeAsync("lang", "fr");
        await phone.Record("step-done", 1);
        await Expect(phone.Target).ToContainTextAsync(new Regex(@"sur téléphone 0:\d\d,\d"));
        await Expect(phone.Status).ToContainTextAsync("1 sur le téléphone, pas encore envoyée");
        await phone.Record("step-done", 2);
        await Expect(phone.Status).ToContainTextAsync("2 sur le téléphone, pas encore envoyées");
        await Expect(phone.Target.Locator(".state")).ToContainTextAsync("sur téléphone");            // on the disk

        // A phone that is set to another language meanwhile has the words that it has.
        await page.GotoAsync($"{Hall.Site}pad/?lang=de");
        await phone.IsAt("heat");
        await Expect(phone.Status).ToContainTextAsync("2 sur le téléphone");
        Assert.Equal(["/floor/words/pad.fr.json"], await Kept(phone));                               // and not under another name

        await phone.Browser.SetOfflineAsync(false);
        await page.ReloadAsync();
        await Expect(phone.Status).ToContainTextAsync("alles sicher");
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2");
        Assert.True(await phone.Becomes("caches.open('pad').then(cache => cache.match('/floor/words/pad.de.json'))"));
        Assert.True(await phone.Becomes("caches.open('pad').then(cache => cache.match('/floor/words/pad.fr.json')).then(kept => !kept)"));
    }

    [Fact]
    public async Task The_address_s_language_goes_before_the_phone_s_stays_after_the_code_and_is_told_to_the_server()
    {
        const int Lane = 32;
        await Hall.Call(QuickWork.Sets(), new Entrant(Lane, "Harbour Anvils", "Joss", "Ilka"));
        var page = await Page(390, 844, phone: true, locale: "fr-FR");
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(new Uri(request.Url).PathAndQuery);
        var phone = new JudgePhone(page, Hall.Site);
        await phone.Open($"?lang=de#{await Hall.CodeOf(Lane)}");
        await phone.IsAt("join");
        await phone.Act("name").FillAsync("Mara");
        await phone.Touch("join");
        await phone.IsAt("confirm");
        await Expect(page.Locator("html")).ToHaveAttributeAsync("lang", "de");
        await Expect(phone.Act("confirm")).ToHaveTextAsync("Ja, ich richte dieses Team");
        Assert.EndsWith("/pad/?lang=de", page.Url, StringComparison.Ordinal);
        await Expect(page.Locator("h1")).ToContainTextAsync("Heat");
        Assert.Contains(asked, path => path.EndsWith($"/sheet?lane={Lane}&lang=de", StringComparison.Ordinal));
        Assert.Contains("/api/pad?lang=de", asked);
    }

    [Theory]
    [InlineData("it-IT", "en")]
    [InlineData("es-MX", "es")]
    public async Task Another_language_is_English_and_a_country_s_own_is_the_language(string locale, string language)
    {
        var page = await Page(390, 844, phone: true, locale: locale);
        await new JudgePhone(page, Hall.Site).Open();
        await Expect(page.Locator("#pad")).ToHaveAttributeAsync("data-view", "join");
        await Expect(page.Locator("html")).ToHaveAttributeAsync("lang", language);
    }

    private static Task<string[]> Kept(JudgePhone phone) =>
        phone.Page.EvaluateAsync<string[]>("async () => (await (await caches.open('pad')).keys()).map(({ url }) => new URL(url).pathname).filter(path => path.includes('/words/pad'))");
}
