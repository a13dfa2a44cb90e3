using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Standings;

namespace LiveHeat.Rehearsal.Rehearse;

/// <summary>The paperwork of one heat: freeze and two signatures, while the next heat goes on.</summary>
internal sealed class ReviewScript(Desk organiser, Desk headJudge, TimeProvider time, IProgress<string> say)
{
    private static readonly TimeSpan LastTaps = TimeSpan.FromSeconds(45);
    private static readonly TimeSpan Reading = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan LongestReading = TimeSpan.FromMinutes(4);
    private static readonly TimeSpan AskAgain = TimeSpan.FromSeconds(3);
    private const int PatientTries = 20;

    /// <summary>From ended to certified.</summary>
    /// <param name="heat">Which.</param>
    /// <param name="title">As said.</param>
    /// <param name="nextRuns">The signatures come when the next heat runs: nobody waits for them.</param>
    /// <param name="stopping">Stops the rehearsal.</param>
    public async Task Run(HeatId heat, string title, Task nextRuns, CancellationToken stopping)
    {
        await Task.Delay(LastTaps, time, stopping).ConfigureAwait(false);
        for (var tries = 0; ; tries++)
        {
            var frame = await organiser.Frame(heat, stopping).ConfigureAwait(false) ?? throw new InvalidOperationException($"{heat} was never called.");
            switch (frame.Phase)
            {
                case Phase.Certified:
                    say.Report($"{title}: certified by organiser and head judge.");
                    return;
                case Phase.Ended:
                    var over = tries > PatientTries ? "the demo waits no longer" : null;
                    if (await Ask(organiser, heat, id => new HeatCommand.Freeze { Id = id, Head = frame.Sequence, Over = over }, stopping).ConfigureAwait(false))
                    {
                        say.Report($"{title}: frozen at number {frame.Sequence}.");
                        await Task.WhenAny(nextRuns, Task.Delay(LongestReading, time, stopping)).ConfigureAwait(false);
                        await Task.Delay(Reading, time, stopping).ConfigureAwait(false);
                    }

                    break;
                case Phase.Frozen when frame.NearTies.FirstOrDefault(tie => !tie.Decided) is { } near:
                    await Decide(heat, near, stopping).ConfigureAwait(false);
                    break;
                case Phase.Frozen:
                    await Sign(organiser, Role.Organiser, heat, frame, stopping).ConfigureAwait(false);
                    await Sign(headJudge, Role.HeadJudge, heat, frame, stopping).ConfigureAwait(false);
                    break;
                default:
                    await Task.Delay(AskAgain, time, stopping).ConfigureAwait(false);
                    break;
            }
        }
    }

    /// <summary>The scripted head judge saw what the times say.</summary>
    private async Task Decide(HeatId heat, NearTie near, CancellationToken stopping)
    {
        say.Report($"Too close to measure: lane {string.Join(" and lane ", near.Lanes)}. The head judge decides.");
        await Ask(
            headJudge, heat,
            id => near.AtCap
                ? new HeatCommand.DecideCap { Id = id, Lane = near.Lanes[0], InTime = near.ApartMs <= 0, Round = near.Round, Reason = "seen from the line" }
                : new HeatCommand.DecideNearTie { Id = id, Lanes = near.Lanes, Tie = near.ApartMs == 0, Reason = "seen from the line" },
            stopping).ConfigureAwait(false);
    }

    private async Task Sign(Desk desk, Role role, HeatId heat, Contracts.Frames.Frame frame, CancellationToken stopping)
    {
        if (!frame.Signed.Contains(role))
        {
            await Ask(desk, heat, id => new HeatCommand.Certify { Id = id, Head = frame.SignedHead }, stopping).ConfigureAwait(false);
            await Task.Delay(Reading / 2, time, stopping).ConfigureAwait(false);
        }
    }

    /// <summary>A refusal (something new came in, taps are still on a phone) is said; then it waits a moment and looks again.</summary>
    private async Task<bool> Ask(Desk desk, HeatId heat, Func<FactId, HeatCommand> command, CancellationToken stopping)
    {
        if (await desk.Ask(heat, command, stopping).ConfigureAwait(false) is not { } refused)
        {
            return true;
        }

        say.Report(refused.Detail);
        await Task.Delay(AskAgain, time, stopping).ConfigureAwait(false);
        return false;
    }
}
