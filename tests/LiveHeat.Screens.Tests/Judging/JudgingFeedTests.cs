using System.Net;
using System.Text;
using System.Text.Json;
using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Clock;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Screens.Judging;

/// <summary>The watch is read while somebody who may rule looks at a running heat, at most every ten seconds.</summary>
public sealed class JudgingFeedTests : IDisposable
{
    private readonly FakeTimeProvider time = new();
    private readonly Server server = new();
    private readonly HttpClient http;
    private readonly SignInStore signIn = new();
    private readonly HeatStore heat;
    private readonly JudgingStore store = new();
    private readonly JudgingFeed feed;
    private long sequence = 10;

    public JudgingFeedTests()
    {
        http = new HttpClient(server) { BaseAddress = new Uri("http://127.0.0.1/") };
        heat = new HeatStore(new ServerClock(time), time);
        feed = new JudgingFeed(new HeatApi(http, new CommandIds(), time), heat, signIn, store, time);
        signIn.Take(new Reply<Me>(new Me(Role.HeadJudge, "Hedda", null, "in-head"), null));
        heat.Follow(HeatConnection.Current);
    }

    public void Dispose() => http.Dispose();

    [Fact]
    public void It_is_read_at_once_and_then_at_most_every_ten_seconds_and_never_misses_the_last()
    {
        feed.Open(Nothing);
        Assert.Empty(server.Asked);
        News("start");
        Assert.Equal(["/api/heats/h1/judging"], server.Asked);

        News("start\nlane 1 step 1 done at 0:30");
        News("start\nlane 1 step 1 done at 0:30\nlane 2 step 1 done at 0:31");
        time.Advance(TimeSpan.FromSeconds(9.9));
        Assert.Single(server.Asked);
        time.Advance(TimeSpan.FromSeconds(0.1));
        Assert.Equal(2, server.Asked.Count);

        time.Advance(TimeSpan.FromMinutes(5));      // nothing new: nothing is asked
        Assert.Equal(2, server.Asked.Count);
    }

    [Fact]
    public void What_comes_is_the_servers_table()
    {
        feed.Open(Nothing);
        News("start");
        Assert.Equal(SomeJudging.Table, store.Table);
    }

    [Fact]
    public void Without_an_answer_it_asks_again_after_ten_seconds()
    {
        server.Status = HttpStatusCode.ServiceUnavailable;
        feed.Open(Nothing);
        News("start");
        Assert.NotNull(store.Problem);
        server.Status = HttpStatusCode.OK;
        time.Advance(TimeSpan.FromSeconds(10));
        Assert.Equal((2, null), (server.Asked.Count, store.Problem));
    }

    [Fact]
    public void Nothing_is_asked_before_GO_by_who_may_not_rule_or_when_nobody_looks()
    {
        feed.Open(Nothing);
        News("");
        Assert.Empty(server.Asked);
        signIn.Take(new Reply<Me>(new Me(Role.Announcer, "Ari", null, "in-say"), null));
        News("start");
        Assert.Empty(server.Asked);
        signIn.Take(new Reply<Me>(new Me(Role.Organiser, "Ona", null, "in-desk"), null));
        feed.Close(Nothing);
        News("start\nlane 1 step 1 done at 0:30");
        Assert.Empty(server.Asked);
    }

    private static void Nothing()
    {
    }

    private void News(string score)
    {
        var (frame, sheet) = SomeHeat.Told(score, ++sequence);
        heat.Take(frame);
        heat.Take(sheet);
    }

    private sealed class Server : HttpMessageHandler
    {
        public List<string> Asked { get; } = [];

        public HttpStatusCode Status { get; set; } = HttpStatusCode.OK;

        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            Asked.Add(request.RequestUri!.AbsolutePath);
            return Task.FromResult(new HttpResponseMessage(Status) { Content = new StringContent(JsonSerializer.Serialize(SomeJudging.Table, WireJson.Options), Encoding.UTF8, "application/json") });
        }
    }
}
