using LiveHeat.Engine.Heats;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR;
using Microsoft.AspNetCore.SignalR.Client;

namespace LiveHeat.Server.Access;

public sealed class WhoMayFilterTests
{
    [Fact]
    public async Task A_method_that_states_nothing_is_refused_to_all()
    {
        await using var host = await SmallHost.Start();
        await using var hub = await Connected(host, await host.Organiser());

        var refusal = await Assert.ThrowsAsync<HubException>(() => hub.InvokeAsync<string>(nameof(SmallHub.Unstated)));

        Assert.Contains("not-yours", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Anybody_may_call_what_is_for_anybody_and_nothing_else()
    {
        await using var host = await SmallHost.Start();
        await using var hub = await Connected(host, host.Browser());

        Assert.Equal("Viewer", await hub.InvokeAsync<string>(nameof(SmallHub.Anybody)));
        var refusal = await Assert.ThrowsAsync<HubException>(() => hub.InvokeAsync<string>(nameof(SmallHub.Desk)));
        Assert.Contains("not-signed-in: ", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_judge_may_not_call_what_is_for_the_desk()
    {
        await using var host = await SmallHost.Start();
        await using var hub = await Connected(host, await host.Joined(Role.Judge, 3));

        var refusal = await Assert.ThrowsAsync<HubException>(() => hub.InvokeAsync<string>(nameof(SmallHub.Desk)));

        Assert.Contains("not-yours: ", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_named_roles_get_through_with_their_name()
    {
        await using var host = await SmallHost.Start();
        await using var hub = await Connected(host, await host.Joined(Role.HeadJudge, name: "Hedda"));

        Assert.Equal("Hedda", await hub.InvokeAsync<string>(nameof(SmallHub.Desk)));
    }

    [Fact]
    public async Task Signing_out_closes_the_connections_that_the_sign_in_opened_and_no_other()
    {
        await using var host = await SmallHost.Start();
        var (leaving, staying) = (await host.Organiser(), await host.Organiser());
        await using var closing = await Connected(host, leaving);
        await using var open = await Connected(host, staying);
        var closed = new TaskCompletionSource();
        closing.Closed += _ =>
        {
            closed.SetResult();
            return Task.CompletedTask;
        };

        await leaving.Post("/api/sign-out", new { });

        await closed.Task.WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Equal("Orla", await open.InvokeAsync<string>(nameof(SmallHub.Desk)));
    }

    [Fact]
    public async Task A_sign_in_that_another_server_ended_calls_nothing_more()
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();
        await using var hub = await Connected(host, organiser);

        await host.Registry.SignIns.Revoke((await organiser.Get("/api/me")).Field("signIn"), CancellationToken.None);

        await Assert.ThrowsAsync<HubException>(() => hub.InvokeAsync<string>(nameof(SmallHub.Desk)));
    }

    internal static async Task<HubConnection> Connected(SmallHost host, Browser browser)
    {
        var hub = new HubConnectionBuilder().WithUrl(new Uri("http://hall.test/hub"), HttpTransportType.WebSockets, options =>
        {
            options.SkipNegotiation = true;
            options.WebSocketFactory = async (connecting, cancellation) =>
            {
                var client = host.Server.CreateWebSocketClient();
                client.ConfigureRequest = request =>
                {
                    request.Headers.Origin = browser.Origin;
                    request.Headers.Cookie = string.Join("; ", browser.Cookies.Select(cookie => $"{cookie.Key}={cookie.Value}"));
                };
                return await client.ConnectAsync(new UriBuilder(connecting.Uri) { Scheme = "http" }.Uri, cancellation);
            };
        }).Build();
        await hub.StartAsync();
        return hub;
    }
}
