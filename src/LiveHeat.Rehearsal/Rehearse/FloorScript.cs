using LiveHeat.Contracts.Frames;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;

namespace LiveHeat.Rehearsal.Rehearse;

/// <summary>What organiser and head judge do with one heat, told by its phase: whatever somebody else did at the desk meanwhile, it goes on from there.</summary>
internal sealed class FloorScript(Desk organiser, Desk headJudge, TimeProvider time, IProgress<string> say)
{
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan WaitForLanes = TimeSpan.FromMinutes(5);
    private const int CountDownMs = 20_000;
    private const int AnswerAfterLooks = 12;
    private const int EndAfterLooks = 25;

    /// <summary>Calls the heat, starts it and ends it.</summary>
    /// <param name="heat">Which.</param>
    /// <param name="title">As said.</param>
    /// <param name="running">Completes when the clock runs.</param>
    /// <param name="stopping">Stops the rehearsal.</param>
    public async Task Run(HeatId heat, string title, TaskCompletionSource running, CancellationToken stopping)
    {
        Phase? before = null;
        var (looks, calledAt) = (0, time.GetTimestamp());
        while (true)
        {
            var frame = await organiser.Frame(heat, stopping).ConfigureAwait(false);
            var phase = frame?.Phase ?? Phase.Planned;
            looks = phase == before ? looks + 1 : 0;
            if (looks == 0)
            {
                say.Report($"{title}: {Words(phase, frame)}");
            }

            before = phase;
            switch (phase)
            {
                case Phase.Planned:
                    await Try(organiser, heat, id => new HeatCommand.Call { Id = id }, stopping).ConfigureAwait(false);
                    calledAt = time.GetTimestamp();
                    break;
                case Phase.Called when time.GetElapsedTime(calledAt) > WaitForLanes:
                    await CountAsReady(heat, frame!, stopping).ConfigureAwait(false);
                    break;
                case Phase.Armed:
                    await Try(organiser, heat, id => new HeatCommand.ScheduleStart { Id = id, InMs = CountDownMs }, stopping).ConfigureAwait(false);
                    break;
                case Phase.Running:
                    running.TrySetResult();
                    await Watch(heat, frame!, stopping).ConfigureAwait(false);
                    break;
                case >= Phase.Ended:
                    running.TrySetResult();
                    return;
            }

            await Task.Delay(Look, time, stopping).ConfigureAwait(false);
        }
    }

    private int callLooks;
    private int doneLooks;

    /// <summary>The head judge goes where called; the organiser ends the heat when every lane is through and has had time for its read-back.</summary>
    private async Task Watch(HeatId heat, Frame frame, CancellationToken stopping)
    {
        callLooks = frame.Calls.Count > 0 ? callLooks + 1 : 0;
        if (callLooks > AnswerAfterLooks)
        {
            callLooks = 0;
            foreach (var lane in frame.Calls)
            {
                await Try(headJudge, heat, id => new HeatCommand.AnswerCall { Id = id, Lane = lane }, stopping).ConfigureAwait(false);
                say.Report($"The head judge answers the call of lane {lane}.");
            }
        }

        var through = frame.Lanes.All(lane => lane.Status is LaneStatus.Finished or LaneStatus.Through or LaneStatus.Capped or LaneStatus.Stopped or LaneStatus.Withdrawn or LaneStatus.Disqualified);
        var agreed = frame.Lanes.All(lane => lane.ReadBack is not null || lane.Status == LaneStatus.Withdrawn);
        doneLooks = through ? doneLooks + 1 : 0;
        if (through && (agreed || doneLooks > EndAfterLooks))
        {
            await Try(organiser, heat, id => new HeatCommand.End { Id = id, Reason = "all lanes are through" }, stopping).ConfigureAwait(false);
        }
    }

    private async Task CountAsReady(HeatId heat, Frame frame, CancellationToken stopping)
    {
        var missing = frame.Lanes.Where(lane => !lane.Ready && lane.Status != LaneStatus.Withdrawn).Select(lane => lane.Lane).ToItems();
        say.Report($"Lane {string.Join(", ", missing)} counts as ready without its phone.");
        await Try(organiser, heat, id => new HeatCommand.OverrideReady { Id = id, Lanes = missing, Reason = "waited five minutes" }, stopping).ConfigureAwait(false);
    }

    /// <summary>A refusal is said; the next look at the heat tells what it means.</summary>
    private async Task Try(Desk desk, HeatId heat, Func<FactId, HeatCommand> command, CancellationToken stopping)
    {
        if (await desk.Ask(heat, command, stopping).ConfigureAwait(false) is { } refused)
        {
            say.Report(refused.Detail);
        }
    }

    private static string Words(Phase phase, Frame? frame) => phase switch
    {
        Phase.Planned => "to be called.",
        Phase.Called => "called; waiting for the judges.",
        Phase.Armed => $"all {frame!.Lanes.Count} lanes are ready.",
        Phase.CountingDown => "GO is set, counting down.",
        Phase.Running => "running.",
        Phase.Halted => "halted.",
        Phase.Ended => "ended.",
        Phase.Frozen => "closed for review.",
        Phase.Certified => "certified.",
        _ => phase.ToString(),
    };
}
