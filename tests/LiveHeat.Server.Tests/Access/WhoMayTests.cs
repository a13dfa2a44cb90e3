using LiveHeat.Engine.Heats;
using Microsoft.AspNetCore.Builder;

namespace LiveHeat.Server.Access;

public sealed class WhoMayTests
{
    [Fact]
    public async Task An_endpoint_that_states_nothing_is_refused_to_all()
    {
        await using var host = await SmallHost.Start(map: app => app.MapGet("/unstated", () => "reached"));

        foreach (var browser in new[] { host.Browser(), await host.Organiser() })
        {
            var answer = await browser.Get("/unstated");
            Assert.Equal(403, answer.Status);
            Assert.Equal("not-yours", answer.Code);
        }
    }

    [Theory]
    [InlineData(Role.Organiser, 200)]
    [InlineData(Role.HeadJudge, 200)]
    [InlineData(Role.Judge, 403)]
    [InlineData(Role.Announcer, 403)]
    [InlineData(Role.Viewer, 401)]
    public async Task Only_the_named_roles_get_through(Role role, int status)
    {
        await using var host = await SmallHost.Start(map: app => app.MapGet("/ruling", () => "ruled").WhoMay(Role.Organiser, Role.HeadJudge));
        var browser = role switch
        {
            Role.Viewer => host.Browser(),
            Role.Organiser => await host.Organiser(),
            Role.Judge => await host.Joined(role, 2),
            _ => await host.Joined(role),
        };

        var answer = await browser.Get("/ruling");

        Assert.Equal(status, answer.Status);
        if (status != 200)
        {
            Assert.Equal(status == 401 ? "not-signed-in" : "not-yours", answer.Code);
            Assert.Contains("the organiser or the head judge", answer.Detail, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task What_anyone_may_needs_no_sign_in()
    {
        await using var host = await SmallHost.Start(map: app => app.MapGet("/board", () => "open").AnyoneMay());

        Assert.Equal("open", (await host.Browser().Get("/board")).Text);
    }

    [Fact]
    public void A_statement_in_code_names_roles_or_says_anyone() =>
        Assert.Throws<ArgumentException>(() => Microsoft.AspNetCore.Builder.WebApplication.Create().MapGet("/", () => "").WhoMay());

    [Fact]
    public async Task A_sign_in_that_names_another_server_is_nobody()
    {
        await using var host = await SmallHost.Start();
        var browser = host.Browser();
        browser.Cookies[SignInCookie.SignInName] = new string('A', 43);

        Assert.Equal("viewer", (await browser.Get("/api/me")).Field("role"));
    }

    [Fact]
    public async Task Another_way_of_calling_an_address_is_told_apart_from_one_without_a_statement()
    {
        await using var host = await SmallHost.Start();

        Assert.Equal(405, (await host.Browser().Get("/api/join")).Status);
    }
}
