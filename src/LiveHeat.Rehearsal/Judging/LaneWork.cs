using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Rehearsal.Phones;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>One start of a lane: the team works, its judge taps.</summary>
internal sealed class LaneWork(SimulatedPhone phone, LaneWatch watch, SimulatedTeam team, LaneStory story, TimeProvider time, Random random)
{
    private readonly TeamMeasures measures = new(random);
    private FactId? last;
    private bool lastWasWrong;
    private bool lostNetwork;
    private bool called;
    private Task network = Task.CompletedTask;

    /// <summary>Follows the lane until it is done, the cap comes, or the start no longer counts.</summary>
    public async Task Follow(CancellationToken stopping)
    {
        // The athletes did not wait for a phone that heard late of the start.
        var aheadMs = phone.Now.Open == 1 ? watch.SinceGoMs : 0;
        var why = Interruption.None;
        while (why is Interruption.None or Interruption.Moved && phone.Line is { } line && phone.Now.Open <= line.Steps.Count)
        {
            var step = line.Steps[phone.Now.Open - 1];
            Befall(step, stopping);
            var play = team.Play(line, step);
            (why, aheadMs) = await Play(step, play, aheadMs, stopping).ConfigureAwait(false);
        }

        await network.ConfigureAwait(false);
        if (why is Interruption.None or Interruption.Moved or Interruption.Capped)
        {
            await ReadBack(stopping).ConfigureAwait(false);
            watch.DoneWithStart();
        }
    }

    /// <summary>Plays one step through.</summary>
    /// <returns>What came in between, and how long the next step has been going when this one's last tap is made: the judge's reaction.</returns>
    private async Task<(Interruption Why, double AheadMs)> Play(SheetStep step, SetPlay play, double workedMs, CancellationToken stopping)
    {
        var open = step.Step;
        foreach (var moment in play.Moments)
        {
            var (why, moreMs) = await watch.Work(moment.AtMs - workedMs, open, stopping).ConfigureAwait(false);
            workedMs += moreMs;
            if (why == Interruption.Capped)
            {
                await AtCap(step, play.UnitsAt(workedMs), stopping).ConfigureAwait(false);
            }

            if (why != Interruption.None)
            {
                return (why, 0);
            }

            Tap(step, moment, play);
            open = moment.Deed == Deed.Done ? step.Step + 1 : step.Step;
        }

        return (Interruption.None, play.Moments[^1].AtMs - play.EndMs);
    }

    private void Tap(SheetStep step, Moment moment, SetPlay play)
    {
        lastWasWrong = moment.Deed == Deed.Done && moment.AtMs < play.EndMs;
        last = moment.Deed switch
        {
            Deed.Done => Done(step),
            Deed.Count => phone.CountReached(step.Step, moment.Count),
            Deed.NoRep => phone.NoRep(step.Step, moment.Fault),
            Deed.TagFault => phone.TagFault(step.Step, moment.Fault),
            Deed.Undo => phone.Undo(last!.Value),
            _ => throw new InvalidOperationException($"No finger does {moment.Deed}."),
        };
    }

    private FactId Done(SheetStep step) => step.Kind switch
    {
        StepKind.Tag => phone.TagMade(step.Step),
        StepKind.Value => phone.ValueEntered(step.Step, measures.Reading(phone.Line!, step)),
        StepKind.Attempt => Attempt(step),
        _ => phone.StepDone(step.Step),
    };

    private FactId Attempt(SheetStep step)
    {
        var (load, good) = measures.Lift(phone.Line!, step);
        return phone.AttemptJudged(step.Step, load, good, good || step.Faults.Count == 0 ? null : step.Faults[random.Next(step.Faults.Count)]);
    }

    /// <summary>The cap: a tap too early is taken back first, then the reps of the open set are entered.</summary>
    private async Task AtCap(SheetStep step, int units, CancellationToken stopping)
    {
        await Pause(2, 5, stopping).ConfigureAwait(false);
        if (lastWasWrong)
        {
            phone.Undo(last!.Value);
        }

        if (step.Kind == StepKind.Set)
        {
            phone.RepsAtCap(step.Step, units);
        }
    }

    private async Task ReadBack(CancellationToken stopping)
    {
        await Pause(4, 9, stopping).ConfigureAwait(false);
        if (!watch.Over && phone.Line is { } line)
        {
            phone.ReadBack(agreed: true, line.Athletes[0]);
        }
    }

    /// <summary>What the lane's story has for this step.</summary>
    private void Befall(SheetStep step, CancellationToken stopping)
    {
        if (step.Step >= story.NetworkLostAt && !lostNetwork)
        {
            lostNetwork = true;
            network = LoseNetwork(stopping);
        }

        if (step.Step >= story.CallsAt && !called)
        {
            called = true;
            phone.CallHeadJudge("Please watch the next athlete with me.");
        }
    }

    private async Task LoseNetwork(CancellationToken stopping)
    {
        phone.Network.LoseAfterNextWrite();
        try
        {
            await time.For(TimeSpan.FromSeconds(10), phone.Network.Gone, stopping).ConfigureAwait(false);
            phone.Network.Lose();
            await Task.Delay(LaneStory.NetworkLostFor, time, stopping).ConfigureAwait(false);
        }
        finally
        {
            phone.Network.Restore();
        }
    }

    private Task Pause(double least, double most, CancellationToken stopping) =>
        Task.Delay(TimeSpan.FromSeconds(random.Between(least, most)), time, stopping);
}
