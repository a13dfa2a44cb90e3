using System.Security.Cryptography;
using System.Text;
using LiveHeat.Engine.Heats;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Server.Access;

public sealed class SignInTests
{
    [Fact]
    public async Task The_passphrase_is_told_at_the_first_start_and_never_again()
    {
        await using var host = await SmallHost.Start();
        var passphrase = host.Services.GetRequiredService<OrganiserPassphrase>();

        var told = await passphrase.EnsurePassphrase();

        Assert.NotNull(told);
        Assert.Null(await passphrase.EnsurePassphrase());
        Assert.Equal(200, (await host.Browser().Post("/api/sign-in", new { passphrase = told, name = "Orla" })).Status);
        Assert.DoesNotContain(Stored(host), file => Contains(file, told) || Contains(file, told.Replace("-", "", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task The_passphrase_signs_the_organiser_in()
    {
        await using var host = await SmallHost.Start();
        var organiser = host.Browser();

        var answer = await organiser.Post("/api/sign-in", new { passphrase = await host.Registry.Passphrase.Renew(CancellationToken.None), name = "Orla" });

        var me = await organiser.Get("/api/me");
        Assert.Equal(answer.Text, me.Text);
        Assert.Equal("organiser", me.Field("role"));
        Assert.Equal("Orla", me.Field("name"));
        Assert.NotEmpty(me.Field("signIn"));
        Assert.Equal("no-store", me.Response.Headers.CacheControl?.ToString());
    }

    [Fact]
    public async Task A_wrong_passphrase_signs_nobody_in()
    {
        await using var host = await SmallHost.Start();
        await host.Registry.Passphrase.Renew(CancellationToken.None);
        var browser = host.Browser();

        var answer = await browser.Post("/api/sign-in", new { passphrase = "AAAAA-AAAAA-AAAAA-AAAAA", name = "Orla" });

        Assert.Equal(403, answer.Status);
        Assert.Equal("wrong-passphrase", answer.Code);
        Assert.DoesNotContain(SignInCookie.SignInName, browser.Cookies.Keys);
    }

    [Fact]
    public async Task A_passphrase_that_was_left_out_is_a_wrong_one()
    {
        await using var host = await SmallHost.Start();
        await host.Registry.Passphrase.Renew(CancellationToken.None);

        Assert.Equal("wrong-passphrase", (await host.Browser().PostText("/api/sign-in", """{"name":"Orla"}""")).Code);
    }

    [Theory]
    [InlineData("http://hall.test", false)]
    [InlineData("https://hall.test", true)]
    public async Task The_cookie_is_out_of_reach_for_scripts_and_other_sites_and_secure_on_https(string address, bool secure)
    {
        await using var host = await SmallHost.Start();
        var browser = host.Browser(address);

        var answer = await browser.Post("/api/sign-in", new { passphrase = await host.Registry.Passphrase.Renew(CancellationToken.None), name = "Orla" });

        var cookie = Assert.Single(answer.SetCookies, line => line.StartsWith($"{SignInCookie.SignInName}=", StringComparison.Ordinal));
        var parts = cookie.Split("; ").Select(part => part.ToLowerInvariant()).ToList();
        Assert.Contains("httponly", parts);
        Assert.Contains("samesite=lax", parts);
        Assert.Contains("path=/", parts);
        Assert.Contains("max-age=2592000", parts);
        Assert.Equal(secure, parts.Contains("secure"));
    }

    [Fact]
    public async Task The_token_has_256_bits_and_only_its_hash_is_stored()
    {
        await using var host = await SmallHost.Start();
        var organiser = host.Browser();
        await organiser.Post("/api/sign-in", new { passphrase = await host.Registry.Passphrase.Renew(CancellationToken.None), name = "Orla" });
        var token = organiser.Cookies[SignInCookie.SignInName];

        Assert.Equal(32, System.Buffers.Text.Base64Url.DecodeFromChars(token).Length);
        var stored = Stored(host);
        Assert.DoesNotContain(stored, file => Contains(file, token));
        Assert.Contains(stored, file => Contains(file, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(token)))));
    }

    [Fact]
    public async Task A_sign_in_outlives_a_restart_of_the_server()
    {
        var folder = Directory.CreateTempSubdirectory("access-").FullName;
        Dictionary<string, string> cookies;
        string id;
        await using (var host = await SmallHost.Start(folder: folder))
        {
            var judge = await host.Joined(Role.Judge, 4);
            (cookies, id) = (judge.Cookies, (await judge.Get("/api/me")).Field("signIn"));
        }

        await using (var host = await SmallHost.Start(folder: folder))
        {
            var judge = host.Browser();
            cookies.ToList().ForEach(cookie => judge.Cookies.Add(cookie.Key, cookie.Value));
            var me = await judge.Get("/api/me");
            Assert.Equal(("judge", "4", id), (me.Field("role"), me.Field("lane"), me.Field("signIn")));
        }

        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Signing_out_ends_it_also_for_a_copy_of_the_cookie()
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();
        var copy = host.Browser();
        copy.Cookies[SignInCookie.SignInName] = organiser.Cookies[SignInCookie.SignInName];
        Assert.Equal("organiser", (await copy.Get("/api/me")).Field("role"));

        Assert.Equal("viewer", (await organiser.Post("/api/sign-out", new { })).Field("role"));

        Assert.DoesNotContain(SignInCookie.SignInName, organiser.Cookies.Keys);
        Assert.Equal("viewer", (await copy.Get("/api/me")).Field("role"));
        Assert.Equal(401, (await copy.Get("/api/setup")).Status);
        Assert.Equal(200, (await organiser.Post("/api/sign-out", new { })).Status);
    }

    [Fact]
    public async Task A_sign_in_lasts_thirty_days()
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();

        host.Time.Advance(SignInCookie.Lifetime - TimeSpan.FromSeconds(1));
        Assert.Equal("organiser", (await organiser.Get("/api/me")).Field("role"));
        host.Time.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal("viewer", (await organiser.Get("/api/me")).Field("role"));
    }

    [Fact]
    public async Task A_name_that_was_left_out_is_asked_for()
    {
        await using var host = await SmallHost.Start();

        Assert.Equal("Your name is missing. Write at least one character.", (await host.Browser().PostText("/api/join", """{"code":"K7F3M2QX"}""")).Detail);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  \t ")]
    [InlineData("\u200B")]
    [InlineData("Or\nla")]
    [InlineData("Or\u0000la")]
    [InlineData("Or\u202Ela")]
    [InlineData("1234567890123456789012345678901234567890123456789012345678901")]
    public async Task A_name_that_cannot_be_is_refused_in_words_and_costs_no_try(string name)
    {
        await using var host = await SmallHost.Start();
        var browser = host.Browser();
        for (var i = 0; i <= WrongTries.Free; i++)
        {
            var answer = await browser.Post("/api/sign-in", new { passphrase = "wrong", name });
            Assert.Equal(400, answer.Status);
            Assert.Equal("bad-name", answer.Code);
            Assert.StartsWith("Your name ", answer.Detail, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("  Orla  ", "Orla")]
    [InlineData("Ægir Þór-O'Neil (desk 2)", "Ægir Þór-O'Neil (desk 2)")]
    [InlineData("美咲", "美咲")]
    [InlineData("123456789012345678901234567890123456789012345678901234567890", "123456789012345678901234567890123456789012345678901234567890")]
    public async Task A_name_is_kept_as_written_without_the_blanks_around_it(string typed, string kept)
    {
        await using var host = await SmallHost.Start();

        var answer = await host.Browser().Post("/api/sign-in", new { passphrase = await host.Registry.Passphrase.Renew(CancellationToken.None), name = typed });

        Assert.Equal(kept, answer.Field("name"));
    }

    [Fact]
    public async Task Facts_name_their_sender_by_sign_in_name_and_role()
    {
        By? by = null;
        await using var host = await SmallHost.Start(map: app => app.MapGet("/by", context =>
        {
            by = context.SignedIn().By();
            return Task.CompletedTask;
        }).AnyoneMay());
        var judge = await host.Joined(Role.Judge, 2);

        await judge.Get("/by");

        Assert.Equal(new By((await judge.Get("/api/me")).Field("signIn"), "Mara", Role.Judge), by);
    }

    private static List<byte[]> Stored(SmallHost host) => [.. Directory.GetFiles(host.Folder).Where(file => !file.EndsWith(".lock", StringComparison.Ordinal)).Select(Read)];

    private static byte[] Read(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    private static bool Contains(byte[] file, string text) => file.AsSpan().IndexOf(Encoding.UTF8.GetBytes(text)) >= 0;
}
