using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Rehearsal.Phones;

namespace LiveHeat.Rehearsal.Rehearse;

/// <summary>A sign-in at the desk: the organiser's or the head judge's browser.</summary>
internal sealed class Desk(Uri server, TimeProvider time) : IDisposable
{
    private static readonly TimeSpan AskAgain = TimeSpan.FromSeconds(1);

    private readonly SiteClient site = new(server, new PhoneNetwork());
    private readonly string outbox = Outbox.NewId();
    private long counter;

    public Task SignIn(string passphrase, string name, CancellationToken stopping) =>
        Patiently(() => site.Post<SignInRequest, Me?>("/api/sign-in", new SignInRequest(passphrase, name), stopping), stopping);

    public Task Join(string code, string name, CancellationToken stopping) =>
        Patiently(() => site.Post<JoinRequest, Me?>("/api/join", new JoinRequest(code, name), stopping), stopping);

    public Task<CodeMade> Code(Role role, LaneNumber? lane, CancellationToken stopping) =>
        Patiently(() => site.Post<CodeRequest, CodeMade>("/api/codes", new CodeRequest(role, lane), stopping), stopping);

    public Task<ProgramList> Programme(CancellationToken stopping) => Patiently(() => site.Get<ProgramList>("/api/program", stopping), stopping);

    public Task<ResultTable> Result(HeatId heat, CancellationToken stopping) => Patiently(() => site.Get<ResultTable>($"/api/heats/{heat}/result", stopping), stopping);

    /// <summary>The heat as it stands; null before it is called.</summary>
    public async Task<Frame?> Frame(HeatId heat, CancellationToken stopping)
    {
        try
        {
            return await Patiently(() => site.Get<Frame>($"/api/heats/{heat}/frame", stopping), stopping).ConfigureAwait(false);
        }
        catch (SiteRefusedException refused) when (refused.Status == 404)
        {
            return null;
        }
    }

    /// <summary>Asks for a command, under one id until it is answered.</summary>
    /// <returns>Null when accepted, now or before; otherwise the refusal.</returns>
    public async Task<SiteRefusedException?> Ask(HeatId heat, Func<FactId, HeatCommand> make, CancellationToken stopping)
    {
        var command = make(new FactId(outbox, Interlocked.Increment(ref counter)));
        try
        {
            await Patiently<CommandAnswer>(() => site.Command(heat, command, stopping), stopping).ConfigureAwait(false);
            return null;
        }
        catch (SiteRefusedException refused) when (refused.Status == 409)
        {
            return refused;
        }
    }

    /// <summary>Sets everything up; putting the same again changes nothing.</summary>
    public async Task SetUp(SetupAll all, CancellationToken stopping)
    {
        await Put("competition", all.Competition, stopping).ConfigureAwait(false);
        foreach (var division in all.Divisions)
        {
            await Put($"divisions/{division.Id}", division, stopping).ConfigureAwait(false);
        }

        foreach (var workout in all.Workouts)
        {
            await Put($"workouts/{workout.Id}", workout, stopping).ConfigureAwait(false);
        }

        foreach (var team in all.Teams)
        {
            await Put($"teams/{team.Id}", team, stopping).ConfigureAwait(false);
        }

        foreach (var heat in all.Heats)
        {
            await Put($"heats/{heat.Id}", heat, stopping).ConfigureAwait(false);
        }
    }

    public void Dispose() => site.Dispose();

    private Task Put<T>(string path, T document, CancellationToken stopping) => Patiently(
        async () =>
        {
            await site.Put($"/api/setup/{path}", document, stopping).ConfigureAwait(false);
            return true;
        },
        stopping);

    private async Task<T> Patiently<T>(Func<Task<T>> ask, CancellationToken stopping)
    {
        while (true)
        {
            try
            {
                return await ask().ConfigureAwait(false);
            }
            catch (Exception trouble) when (trouble is SiteSilentException or SiteRefusedException { MayPass: true })
            {
                await Task.Delay((trouble as SiteRefusedException)?.RetryAfter ?? AskAgain, time, stopping).ConfigureAwait(false);
            }
        }
    }
}
