using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc;

namespace LiveHeat.Server.Access;

public sealed class OwnOriginTests
{
    [Theory]
    [InlineData(null)]
    [InlineData("null")]
    [InlineData("http://elsewhere.test")]
    [InlineData("https://hall.test")]
    [InlineData("http://hall.test:81")]
    [InlineData("http://hall.test.elsewhere.test")]
    [InlineData("http://hall.test@elsewhere.test")]
    public async Task A_write_from_another_page_or_from_none_is_refused_and_does_nothing(string? origin)
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();
        organiser.Origin = origin;

        var answer = await organiser.Post("/api/sign-out", new { });

        Assert.Equal(403, answer.Status);
        Assert.Equal("wrong-origin", answer.Code);
        Assert.Equal("organiser", (await organiser.Get("/api/me")).Field("role"));
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("PATCH")]
    public async Task Every_method_that_changes_something_needs_our_own_page(string method)
    {
        await using var host = await SmallHost.Start();
        var organiser = await host.Organiser();
        organiser.Origin = "http://elsewhere.test";

        var answer = await organiser.Send(new HttpMethod(method), "/api/setup/divisions/open", Browser.Json("""{"id":"open","name":"Open"}"""));

        Assert.Equal("wrong-origin", answer.Code);
        Assert.Empty(await host.Registry.Setup.List(CancellationToken.None));
    }

    [Fact]
    public async Task Our_own_page_is_known_whatever_the_case_and_with_the_port_it_need_not_say()
    {
        await using var host = await SmallHost.Start();
        var browser = host.Browser();
        browser.Origin = "http://HALL.test:80";

        Assert.Equal(200, (await browser.Post("/api/sign-out", new { })).Status);
    }

    [Fact]
    public async Task Reading_needs_no_origin()
    {
        await using var host = await SmallHost.Start();

        Assert.Equal(200, (await host.Browser().Get("/api/me")).Status);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data; boundary=x")]
    public async Task A_body_that_a_foreign_form_could_send_is_refused(string type)
    {
        await using var host = await SmallHost.Start();
        var content = new StringContent("""{"code":"AAAAAAAA","name":"Mara"}""", Encoding.UTF8);
        content.Headers.Remove("Content-Type");
        content.Headers.TryAddWithoutValidation("Content-Type", type);

        var answer = await host.Browser().Send(HttpMethod.Post, "/api/join", content);

        Assert.Equal(415, answer.Status);
        Assert.Equal("not-json", answer.Code);
    }

    [Fact]
    public async Task A_write_without_any_body_is_refused()
    {
        await using var host = await SmallHost.Start();

        Assert.Equal("not-json", (await host.Browser().Send(HttpMethod.Post, "/api/sign-out", null)).Code);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("http://elsewhere.test")]
    public async Task The_hubs_socket_opens_only_for_our_own_pages(string? origin)
    {
        await using var host = await SmallHost.Start();
        var browser = host.Browser();
        browser.Origin = origin;

        var refused = await Assert.ThrowsAnyAsync<Exception>(() => WhoMayFilterTests.Connected(host, browser));
        Assert.Contains("403", refused.ToString(), StringComparison.Ordinal);

        browser.Origin = "http://hall.test";
        await using var hub = await WhoMayFilterTests.Connected(host, browser);
        Assert.Equal(Microsoft.AspNetCore.SignalR.Client.HubConnectionState.Connected, hub.State);
    }

    [Fact]
    public async Task A_body_above_a_megabyte_is_refused_before_it_is_read()
    {
        await using var host = await SmallHost.Start();

        var answer = await host.Browser().PostText("/api/join", $$"""{"code":"{{new string('A', 1024 * 1024)}}","name":"Mara"}""");

        Assert.Equal(413, answer.Status);
        Assert.Equal("too-large", answer.Code);
    }

    [Fact]
    public async Task A_body_that_does_not_say_its_length_is_cut_off_at_a_megabyte()
    {
        await using var host = await SmallHost.Start(onPort: true);
        var address = host.Address.GetLeftPart(UriPartial.Authority);
        var endless = new StreamContent(new MemoryStream(Encoding.UTF8.GetBytes($$"""{"name":"{{new string('A', 3 * 1024 * 1024)}}"}""")));
        endless.Headers.TryAddWithoutValidation("Content-Type", "application/json");
        using var handler = new SocketsHttpHandler { UseCookies = false };
        using var client = new HttpClient(handler);
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri($"{address}/api/join")) { Content = endless };
        request.Headers.TransferEncodingChunked = true;
        request.Headers.Add("Origin", address);
        request.Headers.ExpectContinue = false;

        using var response = await client.SendAsync(request);

        Assert.Equal(413, (int)response.StatusCode);
        Assert.Contains("\"too-large\"", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_endpoint_may_state_another_size()
    {
        await using var host = await SmallHost.Start(map: app => app.MapPost("/large", async (HttpRequest request) => await new StreamReader(request.Body).ReadToEndAsync())
            .AnyoneMay().WithMetadata(new RequestSizeLimitAttribute(4 * 1024 * 1024)));

        Assert.Equal(200, (await host.Browser().PostText("/large", new string(' ', 2 * 1024 * 1024))).Status);
        Assert.Equal(413, (await host.Browser().PostText("/large", new string(' ', 5 * 1024 * 1024))).Status);
    }
}
