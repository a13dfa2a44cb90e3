using System.Buffers.Text;
using System.Net;
using System.Net.Http.Json;
using System.Security.Cryptography;
using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing.Hosting.Faults;

namespace LiveHeat.Testing.Hosting.Torture;

/// <summary>The organiser of a tortured heat, on an undisturbed line.</summary>
internal sealed class TortureDesk : IDisposable
{
    /// <summary>The heat.</summary>
    public const string Heat = "h1";

    private const int Rounds = 500;
    private readonly HttpClient client;
    private readonly string outbox = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16));
    private int made;

    private TortureDesk(Uri address) => client = NewClient(address, new CookieContainer());

    /// <summary>Signs in with the passphrase that the server told at its first start.</summary>
    public static async Task<TortureDesk> Open(HubProcess hub)
    {
        var desk = new TortureDesk(hub.Address);
        await desk.Post("api/sign-in", new SignInRequest(hub.Passphrase!, "Ona"));
        return desk;
    }

    /// <summary>Sets a heat up, brings a judge to every lane, and notes that the horn went.</summary>
    /// <param name="through">The address that the phones use.</param>
    /// <param name="lanes">How many.</param>
    /// <param name="seed">For the phones' dice.</param>
    public async Task<List<TorturePhone>> CallAndGo(Uri through, int lanes, int seed)
    {
        await Call(lanes);
        var phones = new List<TorturePhone>();
        for (var lane = 1; lane <= lanes; lane++)
        {
            var cookies = new CookieContainer();
            using var judge = NewClient(client.BaseAddress!, cookies);
            await Post(judge, "api/join", new JoinRequest(await Code(lane), $"Judge {lane}"));
            await Post(judge, $"api/heats/{Heat}/commands", (HeatCommand)new HeatCommand.TakeSeat { Id = NewId(), Lane = new LaneNumber(lane) });
            phones.Add(new TorturePhone(through, cookies, lane, seed + lane) { LastStep = Rounds });
        }

        await Go();
        foreach (var phone in phones)
        {
            phone.Seat = (await Frame()).Lanes.Single(lane => lane.Lane == phone.Lane).Seat!.Value;
        }

        return phones;
    }

    /// <summary>Sets the heat up and calls it: everybody works together, set after set, no set takes any least time.</summary>
    /// <param name="lanes">Teams.</param>
    /// <param name="rounds">Sets: the sheet of a long work is large.</param>
    public async Task Call(int lanes, int rounds = Rounds)
    {
        await SetUp(lanes, rounds);
        await Do(new HeatCommand.Call { Id = NewId() });
    }

    /// <summary>The horn went a moment ago.</summary>
    public Task Go() => Do(new HeatCommand.ObserveStart { Id = NewId(), AgoMs = 0, Reason = "a torture" });

    /// <summary>A command that must be accepted.</summary>
    public Task Do(HeatCommand command) => Post($"api/heats/{Heat}/commands", command);

    /// <summary>A new code for a lane's phones.</summary>
    public async Task<string> Code(int lane) => (await Post<CodeMade>("api/codes", new CodeRequest(Role.Judge, new LaneNumber(lane)))).Code;

    public FactId NewId() => new(outbox, ++made);

    /// <summary>The heat's facts as the server has them.</summary>
    public async Task<IReadOnlyList<FactLine>> Facts() =>
        (await client.GetFromJsonAsync<FactLines>($"api/heats/{Heat}/facts", WireJson.Options))!.Facts;

    /// <summary>The newest frame.</summary>
    public async Task<Frame> Frame() => (await client.GetFromJsonAsync<Frame>($"api/heats/{Heat}/frame", WireJson.Options))!;

    /// <inheritdoc/>
    public void Dispose() => client.Dispose();

    private async Task SetUp(int lanes, int rounds)
    {
        await Put("competition", new CompetitionSetup("Torture"));
        await Put("divisions/open", new DivisionSetup("open", "Open"));
        await Put("workouts/w1", new Workout(
            "w1", "Long Night", new RelayOrder.Together(), Counting.Sets, 1, FinishKind.None,
            [new Movement("burpee", "burpees", Unit.Reps, 3, 0, "", [])],
            [new Prescription("open", "Open", 4 * 60 * 60 * 1000, rounds, [], [new PrescribedSet("burpee", 10)], [])]));
        for (var lane = 1; lane <= lanes; lane++)
        {
            await Put($"teams/t{lane}", new TeamSetup($"t{lane}", $"Team {lane}", "open", ["Ann", "Bo"]));
        }

        await Put($"heats/{Heat}", new HeatSetup(
            Heat, 1, "Heat 1", "w1", null, Enumerable.Range(1, lanes).Select(lane => new HeatSetupLane(new LaneNumber(lane), $"t{lane}")).ToItems()));
    }

    private async Task Put<T>(string path, T body)
    {
        using var answer = await client.PutAsJsonAsync($"api/setup/{path}", body, WireJson.Options);
        await Fine(answer);
    }

    private Task Post<T>(string path, T body) => Post(client, path, body);

    private static async Task Post<T>(HttpClient from, string path, T body)
    {
        using var answer = await from.PostAsJsonAsync(path, body, WireJson.Options);
        await Fine(answer);
    }

    private async Task<TAnswer> Post<TAnswer>(string path, CodeRequest body)
    {
        using var answer = await client.PostAsJsonAsync(path, body, WireJson.Options);
        await Fine(answer);
        return (await answer.Content.ReadFromJsonAsync<TAnswer>(WireJson.Options))!;
    }

    private static async Task Fine(HttpResponseMessage answer)
    {
        if (!answer.IsSuccessStatusCode)
        {
            throw new InvalidOperationException($"{answer.RequestMessage?.RequestUri} answers {(int)answer.StatusCode} {await answer.Content.ReadAsStringAsync()}");
        }
    }

    private static HttpClient NewClient(Uri address, CookieContainer cookies)
    {
        var client = new HttpClient(new SocketsHttpHandler { CookieContainer = cookies }) { BaseAddress = address };
        client.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
        return client;
    }
}
