using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using LiveHeat.Contracts;
using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Judging;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Replays;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Connection;

/// <summary>The server over HTTP, asked in the screen's language. Every call answers; none throws for what a network or a server may do.</summary>
/// <remarks>Every write is safe to repeat, so one that got no answer is sent again as it was, with the same id.</remarks>
public sealed class HeatApi(HttpClient http, CommandIds ids, TimeProvider time)
{
    private static readonly int[] AgainAfterMs = [300, 700, 1500, 3000];
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    /// <summary>A replay or a picture may be some megabytes.</summary>
    private static readonly TimeSpan LongPatience = TimeSpan.FromSeconds(60);

    /// <summary>Who is signed in on this browser.</summary>
    public Task<Reply<Me>> Me() => Get<Me>("api/me");

    /// <summary>Whether the server can write.</summary>
    public Task<Reply<Health>> Health() => Get<Health>("health");

    /// <summary>The list of heats.</summary>
    public Task<Reply<ProgramList>> Program() => Get<ProgramList>("api/program");

    /// <summary>What is to be done in a heat; "no-such-heat" before its call.</summary>
    public Task<Reply<Sheet>> Sheet(HeatId heat) => Get<Sheet>($"{Path(heat)}/sheet");

    /// <summary>All facts after a sequence. Organiser and head judge.</summary>
    public Task<Reply<FactLines>> Facts(HeatId heat, long after) => Get<FactLines>($"{Path(heat)}/facts?after={after}");

    /// <summary>The result as it stands.</summary>
    public Task<Reply<ResultTable>> Result(HeatId heat) => Get<ResultTable>($"{Path(heat)}/result");

    /// <summary>The heat to be played again. Organiser, head judge, announcer.</summary>
    public Task<Reply<ReplayLines>> Replay(HeatId heat, ReplayBy by) =>
        Try<ReplayLines>(HttpMethod.Get, $"{Path(heat)}/replay?by={(by == ReplayBy.Known ? "known" : "happened")}", null, LongPatience);

    /// <summary>How a heat is judged, lane by lane. Organiser and head judge.</summary>
    public Task<Reply<JudgingTable>> Judging(HeatId heat) => Get<JudgingTable>($"{Path(heat)}/judging");

    /// <summary>What every judge gave over all heats. Organiser and head judge.</summary>
    public Task<Reply<JudgePage[]>> Judges() => Get<JudgePage[]>("api/judges");

    /// <summary>Everything set up. Organiser.</summary>
    public Task<Reply<SetupAll>> Setup() => Get<SetupAll>("api/setup");

    /// <summary>How to say the teams' names, and what to say of them. Announcer, organiser, head judge.</summary>
    public Task<Reply<TeamIntroduction[]>> Introductions() => Get<TeamIntroduction[]>("api/introductions");

    /// <summary>The movements that come with the program, in the language of the screen.</summary>
    public Task<Reply<MovementLibrary>> Library() => Get<MovementLibrary>($"api/library?language={Tongue.Current}");

    /// <summary>Signs the organiser in.</summary>
    public Task<Reply<Done>> SignIn(string passphrase, string name) => Write(HttpMethod.Post, "api/sign-in", new SignInRequest(passphrase, name));

    /// <summary>Redeems a join code.</summary>
    public Task<Reply<Done>> Join(string code, string name) => Write(HttpMethod.Post, "api/join", new JoinRequest(code, name));

    /// <summary>Ends this browser's sign-in.</summary>
    public Task<Reply<Done>> SignOut() => Write(HttpMethod.Post, "api/sign-out", new object());

    /// <summary>A new join code, told once. Organiser. Asking again makes another, so this is not repeated by itself.</summary>
    public Task<Reply<CodeMade>> MakeCode(CodeRequest request) => Once<CodeMade>(HttpMethod.Post, "api/codes", request);

    /// <summary>Keeps the competition's name and rounding.</summary>
    public Task<Reply<Done>> Keep(CompetitionSetup competition) => Write(HttpMethod.Put, "api/setup/competition", competition);

    /// <summary>Keeps a division.</summary>
    public Task<Reply<Done>> Keep(DivisionSetup division) => Write(HttpMethod.Put, $"api/setup/divisions/{Uri.EscapeDataString(division.Id)}", division);

    /// <summary>Keeps a workout.</summary>
    public Task<Reply<Done>> Keep(Workout workout) => Write(HttpMethod.Put, $"api/setup/workouts/{Uri.EscapeDataString(workout.Id)}", workout);

    /// <summary>Keeps a team.</summary>
    public Task<Reply<Done>> Keep(TeamSetup team) => Write(HttpMethod.Put, $"api/setup/teams/{Uri.EscapeDataString(team.Id)}", team);

    /// <summary>Keeps a heat.</summary>
    public Task<Reply<Done>> Keep(HeatSetup heat) => Write(HttpMethod.Put, $"api/setup/heats/{Uri.EscapeDataString(heat.Id)}", heat);

    /// <summary>Keeps how places become points.</summary>
    public Task<Reply<Done>> Keep(PointsSetup points) => Write(HttpMethod.Put, "api/setup/points", points);

    /// <summary>Keeps an own movement.</summary>
    public Task<Reply<Done>> Keep(LibraryMovement movement) => Write(HttpMethod.Put, $"api/setup/movements/{Uri.EscapeDataString(movement.Id)}", movement);

    /// <summary>What boards tell the hall; an empty text takes it away. Organiser.</summary>
    public Task<Reply<Done>> Put(BoardMessage message) => Write(HttpMethod.Put, "api/board/message", message);

    /// <summary>Attaches a picture to an own movement.</summary>
    public Task<Reply<LibraryMovement>> PutPicture(string movement, string contentType, byte[] picture)
    {
        var content = new ByteArrayContent(picture);
        content.Headers.TryAddWithoutValidation("Content-Type", contentType);
        return Send<LibraryMovement>(HttpMethod.Put, $"api/setup/movements/{Uri.EscapeDataString(movement)}/picture", content, LongPatience);
    }

    /// <summary>Deletes a division, workout, team, heat or own movement.</summary>
    /// <param name="kind">"divisions", "workouts", "teams", "heats" or "movements".</param>
    /// <param name="id">Its id.</param>
    public Task<Reply<Done>> Delete(string kind, string id) => Write<object>(HttpMethod.Delete, $"api/setup/{kind}/{Uri.EscapeDataString(id)}", null);

    /// <summary>An id for a command of this page.</summary>
    public FactId NextId() => ids.Next();

    /// <summary>Asks for something in a heat; without an answer it asks again, with the same id.</summary>
    /// <param name="heat">Which heat.</param>
    /// <param name="command">What, with an id of <see cref="NextId"/>.</param>
    /// <param name="again">Told before each repetition.</param>
    public Task<Reply<CommandAnswer>> Ask(HeatId heat, HeatCommand command, Action? again = null) =>
        Repeat<CommandAnswer>(HttpMethod.Post, $"{Path(heat)}/commands", JsonSerializer.Serialize(command, WireJson.Options), again);

    private static string Path(HeatId heat) => $"api/heats/{Uri.EscapeDataString(heat.Value)}";

    private Task<Reply<T>> Get<T>(string path)
        where T : class => Try<T>(HttpMethod.Get, path, null);

    private Task<Reply<Done>> Write<T>(HttpMethod method, string path, T? body) =>
        Repeat<Done>(method, path, body is null ? "{}" : JsonSerializer.Serialize(body, WireJson.Options), null);

    private Task<Reply<T>> Once<T>(HttpMethod method, string path, object body)
        where T : class => Try<T>(method, path, JsonSerializer.Serialize(body, WireJson.Options));

    private async Task<Reply<T>> Repeat<T>(HttpMethod method, string path, string json, Action? again)
        where T : class
    {
        foreach (var waitMs in AgainAfterMs)
        {
            var reply = await Try<T>(method, path, json);
            if (reply.Problem is not { Code: Connection.Problem.NoAnswer })
            {
                return reply;
            }

            again?.Invoke();
            await Task.Delay(TimeSpan.FromMilliseconds(waitMs), time);
        }

        return await Try<T>(method, path, json);
    }

    private Task<Reply<T>> Try<T>(HttpMethod method, string path, string? json, TimeSpan? patience = null)
        where T : class => Send<T>(method, path, json is null ? null : new StringContent(json, Encoding.UTF8, "application/json"), patience);

    private async Task<Reply<T>> Send<T>(HttpMethod method, string path, HttpContent? content, TimeSpan? patience = null)
        where T : class
    {
        try
        {
            using var request = new HttpRequestMessage(method, path) { Content = content };
            request.Headers.AcceptLanguage.ParseAdd(Tongue.Current);
            using var late = new CancellationTokenSource(patience ?? Patience, time);
            using var answer = await http.SendAsync(request, late.Token);
            if (!answer.IsSuccessStatusCode)
            {
                return await ProblemReading.Read(answer, CancellationToken.None);
            }

            return typeof(T) == typeof(Done) ? (T)(object)Done.Well
                : await answer.Content.ReadFromJsonAsync<T>(WireJson.Options, late.Token) is { } value ? value
                : Connection.Problem.Of(Connection.Problem.OddAnswer, ProblemWords.OddAnswer((int)answer.StatusCode));
        }
        catch (Exception unreached) when (unreached is HttpRequestException or OperationCanceledException)
        {
            return Connection.Problem.Of(Connection.Problem.NoAnswer, ProblemWords.NoAnswer);
        }
        catch (JsonException)
        {
            return Connection.Problem.Of(Connection.Problem.OddAnswer, ProblemWords.NotOurWords);
        }
    }
}

/// <summary>The answer of a write that gives nothing back.</summary>
public sealed record Done
{
    /// <summary>It went well.</summary>
    public static readonly Done Well = new();
}
