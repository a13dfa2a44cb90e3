using System.Globalization;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Access;

public sealed class JoinTests
{
    private const string Wrong = "ZZZZZZZZ";

    [Fact]
    public async Task A_code_is_made_by_the_organiser_for_a_role_and_a_lane()
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();

        var made = await organiser.Post("/api/codes", new { role = "judge", lane = 2, minutes = 90 });

        Assert.Equal(200, made.Status);
        Assert.Matches("^[0-9A-HJKMNP-TV-Z]{8}$", made.Field("code"));
        Assert.Equal($"http://hall.test/pad/#{made.Field("code")}", made.Field("url"));
        Assert.Equal(("judge", "2"), (made.Field("role"), made.Field("lane")));
        Assert.Equal(host.Time.GetUtcNow().AddMinutes(90).ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture), made.Field("expiresAt"));

        var judge = host.Browser();
        var me = await judge.Post("/api/join", new { code = made.Field("code"), name = "Mara" });
        Assert.Equal(("judge", "2", "Mara"), (me.Field("role"), me.Field("lane"), me.Field("name")));
        Assert.Equal(me.Text, (await judge.Get("/api/me")).Text);
    }

    [Theory]
    [InlineData("head-judge")]
    [InlineData("announcer")]
    public async Task Screens_without_a_lane_join_on_their_own_page(string role)
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();

        var made = await organiser.Post("/api/codes", new { role });

        Assert.Equal($"http://hall.test/join/#{made.Field("code")}", made.Field("url"));
        Assert.Equal(host.Time.GetUtcNow().AddHours(12).ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture), made.Field("expiresAt"));
        Assert.Equal(role, (await host.Browser().Post("/api/join", new { code = made.Field("code"), name = "Nils" })).Field("role"));
    }

    [Theory]
    [InlineData("organiser", null, 60, "role")]
    [InlineData("viewer", null, 60, "role")]
    [InlineData("judge", null, 60, "lane")]
    [InlineData("announcer", 1, 60, "lane")]
    [InlineData("judge", 1, 0, "minutes")]
    [InlineData("judge", 1, 2881, "minutes")]
    public async Task A_code_that_cannot_be_is_refused_with_its_field(string role, int? lane, int minutes, string field)
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();

        var answer = await organiser.Post("/api/codes", new { role, lane, minutes });

        Assert.Equal(400, answer.Status);
        Assert.Equal("bad-setup", answer.Code);
        Assert.Equal(field, answer.Json.GetProperty("errors")[0].GetProperty("field").GetString());
        Assert.Empty(await host.Registry.JoinCodes.List(CancellationToken.None));
    }

    [Fact]
    public async Task Nobody_else_makes_codes()
    {
        await using var host = await SmallHost.Start();

        Assert.Equal(401, (await host.Browser().Post("/api/codes", new { role = "judge", lane = 1 })).Status);
        Assert.Equal(403, (await (await host.Joined(Role.HeadJudge)).Post("/api/codes", new { role = "judge", lane = 1 })).Status);
    }

    [Fact]
    public async Task A_code_may_be_typed_as_it_was_read_out()
    {
        await using var host = await SmallHost.Start();
        while (true)
        {
            var code = (await host.Registry.JoinCodes.Make(Role.Judge, new LaneNumber(1), TimeSpan.FromHours(1), CancellationToken.None)).Text;
            if (!code.Contains('0', StringComparison.Ordinal) || !code.Contains('1', StringComparison.Ordinal))
            {
                continue;   // one in twenty has both
            }

            string[] typed = [code.ToLowerInvariant(), code.Replace('0', 'O'), code.Replace('0', 'o'), code.Replace('1', 'I'), code.Replace('1', 'l'), $" {code[..4]}-{code[4..]} "];
            foreach (var text in typed)
            {
                Assert.Equal(200, (await host.Browser().Post("/api/join", new { code = text, name = "Mara" })).Status);
            }

            return;
        }
    }

    [Fact]
    public async Task Several_phones_join_with_a_lanes_code()
    {
        await using var host = await SmallHost.Start();
        var code = (await host.Registry.JoinCodes.Make(Role.Judge, new LaneNumber(1), TimeSpan.FromHours(1), CancellationToken.None)).Text;

        var ids = new List<string>();
        foreach (var name in new[] { "Mara", "Nils", "Ola" })
        {
            ids.Add((await host.Browser().Post("/api/join", new { code, name })).Field("signIn"));
        }

        Assert.Equal(3, ids.Distinct().Count());
    }

    [Fact]
    public async Task A_code_lets_in_until_it_expires_and_not_from_then_on()
    {
        await using var host = await SmallHost.Start();
        var code = (await host.Registry.JoinCodes.Make(Role.Judge, new LaneNumber(1), TimeSpan.FromMinutes(10), CancellationToken.None)).Text;

        host.Time.Advance(TimeSpan.FromMinutes(10) - TimeSpan.FromMilliseconds(1));
        Assert.Equal(200, (await host.Browser().Post("/api/join", new { code, name = "Mara" })).Status);

        host.Time.Advance(TimeSpan.FromMilliseconds(1));
        var answer = await host.Browser().Post("/api/join", new { code, name = "Mara" });
        Assert.Equal(403, answer.Status);
        Assert.Equal("code-expired", answer.Code);
    }

    [Fact]
    public async Task A_new_code_for_the_same_role_and_lane_ends_the_old_one_and_no_other()
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();
        async Task<string> Made(string role, int? lane) => (await organiser.Post("/api/codes", new { role, lane })).Field("code");
        async Task<int> Joining(string code) => (await host.Browser().Post("/api/join", new { code, name = "Mara" })).Status;
        var (old, otherLane, otherRole) = (await Made("judge", 1), await Made("judge", 2), await Made("head-judge", null));
        var joined = host.Browser();
        await joined.Post("/api/join", new { code = old, name = "Mara" });

        var replacing = await Made("judge", 1);

        Assert.Equal(403, await Joining(old));
        Assert.Equal(200, await Joining(replacing));
        Assert.Equal(200, await Joining(otherLane));
        Assert.Equal(200, await Joining(otherRole));
        Assert.Equal("judge", (await joined.Get("/api/me")).Field("role"));
    }

    [Fact]
    public async Task A_preview_of_the_link_spends_nothing_and_signs_nobody_in()
    {
        await using var host = await SmallHost.Start();
        var code = (await host.Registry.JoinCodes.Make(Role.Judge, new LaneNumber(1), TimeSpan.FromHours(1), CancellationToken.None)).Text;
        var preview = host.Browser();

        foreach (var address in new[] { $"/api/join?code={code}&name=Preview", $"/api/join/{code}", $"/pad/#{code}" })
        {
            Assert.InRange((await preview.Get(address)).Status, 400, 499);
        }

        Assert.Empty(preview.Cookies);
        Assert.Empty(await host.Registry.SignIns.List(CancellationToken.None));
        Assert.Equal(200, (await host.Browser().Post("/api/join", new { code, name = "Mara" })).Status);
    }

    [Fact]
    public async Task A_wrong_code_signs_nobody_in()
    {
        await using var host = await SmallHost.Start();
        var browser = host.Browser();

        var answer = await browser.Post("/api/join", new { code = Wrong, name = "Mara" });

        Assert.Equal(403, answer.Status);
        Assert.Equal("wrong-code", answer.Code);
        Assert.Equal("viewer", (await browser.Get("/api/me")).Field("role"));
    }

    [Fact]
    public async Task The_code_of_another_lane_makes_another_sign_in_and_ends_the_one_before()
    {
        await using var host = await SmallHost.Start();
        var judge = await host.Joined(Role.Judge, 1);
        var before = judge.Cookies[SignInCookie.SignInName];
        var id = (await judge.Get("/api/me")).Field("signIn");
        var code = (await host.Registry.JoinCodes.Make(Role.Judge, new LaneNumber(2), TimeSpan.FromHours(1), CancellationToken.None)).Text;

        var me = await judge.Post("/api/join", new { code, name = "Mara" });

        Assert.Equal("2", me.Field("lane"));
        Assert.NotEqual(id, me.Field("signIn"));
        var copy = host.Browser();
        copy.Cookies[SignInCookie.SignInName] = before;
        Assert.Equal("viewer", (await copy.Get("/api/me")).Field("role"));
    }

    [Fact]
    public async Task Joining_again_as_the_same_keeps_the_sign_in_and_so_the_seat()
    {
        await using var host = await SmallHost.Start();
        var code = (await host.Registry.JoinCodes.Make(Role.Judge, new LaneNumber(1), TimeSpan.FromHours(1), CancellationToken.None)).Text;
        var judge = host.Browser();
        var first = await judge.Post("/api/join", new { code, name = "Mara" });

        Assert.Equal(first.Text, (await judge.Post("/api/join", new { code, name = " Mara " })).Text);
        Assert.NotEqual(first.Field("signIn"), (await judge.Post("/api/join", new { code, name = "Nils" })).Field("signIn"));
    }
}
