using System.Net;
using System.Text;
using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;

namespace LiveHeat.Screens.Connection;

/// <summary>The server is asked in the language of the screen, and what it says of itself is shown.</summary>
public sealed class HeatApiTests
{
    [Theory]
    [InlineData("de")]
    [InlineData("es")]
    public async Task Every_question_and_every_write_carries_the_screens_language(string language)
    {
        Tongue.Speak(language);
        var server = new Speaking();
        using var http = new HttpClient(server) { BaseAddress = new Uri("http://127.0.0.1/") };
        var api = new HeatApi(http, new CommandIds(), TimeProvider.System);

        var read = await api.Result(new HeatId("h1"));
        var written = await api.Ask(new HeatId("h1"), new HeatCommand.End { Id = api.NextId() });

        Assert.Equal([language, language], server.Asked);
        Assert.Equal((("no-such-heat", language), ("no-such-heat", language)), ((read.Problem!.Code, read.Problem.Detail), (written.Problem!.Code, written.Problem.Detail)));
    }

    /// <summary>Answers each with a problem whose sentence is the language asked for.</summary>
    private sealed class Speaking : HttpMessageHandler
    {
        public List<string> Asked { get; } = [];

        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            Asked.Add(request.Headers.AcceptLanguage.ToString());
            return Task.FromResult(new HttpResponseMessage(HttpStatusCode.NotFound)
            {
                Content = new StringContent($$"""{"code":"no-such-heat","detail":"{{Asked[^1]}}"}""", Encoding.UTF8, "application/problem+json"),
            });
        }
    }
}
