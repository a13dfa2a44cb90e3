using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using LiveHeat.Engine.Rules;
using LiveHeat.Ledger.Facts;
using LiveHeat.Server.Access;

namespace LiveHeat.Server.Heats;

public sealed partial class HeatSession
{
    /// <summary>Takes a batch of taps from one phone. Safe to repeat: a tap already on the ledger is answered "known".</summary>
    /// <returns>One receipt a tap, in the order sent; nothing of it is told before it is on disk.</returns>
    /// <exception cref="LedgerUnavailable">The disk did not take it: nothing was recorded.</exception>
    public async Task<TapReceipts> Take(TapBatch batch, SignedIn sender, CancellationToken cancellation)
    {
        var taps = batch.Taps.Select(OfferedTap.Read).ToList();
        await turn.WaitAsync(cancellation);
        try
        {
            var elsewhere = new HashSet<FactId>();
            while (true)
            {
                var receipts = taps.Select(tap => Look(tap, sender, elsewhere)).ToList();
                var news = Enumerable.Range(0, taps.Count).Where(i => receipts[i] is null).DistinctBy(i => taps[i].Fact!.Id).ToList();
                if (news.Count == 0 || await Append([.. news.Select(i => Line(taps[i].Fact!.Id, sender.Id, taps[i].BodyHash, taps[i].Body))], elsewhere, cancellation))
                {
                    news.ForEach(i => receipts[i] = Receipt(taps[i], TapOutcome.Accepted));
                    // The same id twice in one batch: now that the first is on disk the second is known, or a conflict.
                    return new TapReceipts(ledger.Epoch, State.Head, [.. taps.Zip(receipts, (tap, receipt) => receipt ?? Look(tap, sender, elsewhere)!)]);
                }
            }
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Decides a command on the newest state and writes the fact it becomes. Safe to repeat with the same id and body.</summary>
    /// <param name="command">What is asked.</param>
    /// <param name="bodyHash">Of the command as sent (<see cref="HashOf"/>): the same id with another body is a conflict.</param>
    /// <param name="ask">Who asks, and what the facts do not know.</param>
    /// <param name="cancellation">Gives up waiting; what is written stays written.</param>
    /// <exception cref="JsonException">A number in it is too large to be kept; nothing was written.</exception>
    public async Task<CommandResult> Do(HeatCommand command, string bodyHash, Func<HeatState, Asking> ask, CancellationToken cancellation)
    {
        await turn.WaitAsync(cancellation);
        try
        {
            while (true)
            {
                var asking = ask(State);
                if (known.TryGetValue(command.Id, out var before))
                {
                    return before.BodyHash == bodyHash && before.Sender == asking.By.SignIn
                        ? new CommandResult.Done(new CommandAnswer(TapOutcome.Known, before.Sequence, State.Head))
                        : CommandResult.Conflict;
                }

                if (BrokenAt is { } broken && command is HeatCommand.Freeze or HeatCommand.Certify)
                {
                    return new CommandResult.Refused(new Verdict.Refused("ledger-broken", HeatRefusals.Broken(broken)));
                }

                var verdict = HeatRules.Decide(State, command, asking);
                if (verdict is not Verdict.Accepted(var fact))
                {
                    return new CommandResult.Refused((Verdict.Refused)verdict);
                }

                var elsewhere = new HashSet<FactId>();
                if (await Append([Line(fact.Id, asking.By.SignIn, bodyHash, BodyOf(fact))], elsewhere, cancellation))
                {
                    return new CommandResult.Done(new CommandAnswer(TapOutcome.Accepted, known[command.Id].Sequence, State.Head));
                }

                if (elsewhere.Count > 0)
                {
                    return CommandResult.Conflict;
                }
            }
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>True when it is on disk and folded; false when the caller has to look again.</summary>
    private async Task<bool> Append(List<NewLine> news, HashSet<FactId> elsewhere, CancellationToken cancellation)
    {
        // A caller who leaves does not take the fact with them: whether it was written would be unknown.
        cancellation.ThrowIfCancellationRequested();
        switch (await ledger.TryAppend(Heat, lastRead, news, CancellationToken.None))
        {
            case Ledger.Facts.Append.Done done:
                Fold(done.Lines);
                return true;
            case Ledger.Facts.Append.Behind behind when behind.Head < lastRead:
                await StartOver(CancellationToken.None);
                return false;
            case Ledger.Facts.Append.IdTaken taken when taken.Existing.Heat != Heat:
                elsewhere.Add(taken.Id);
                return false;
            default:
                await CatchUp(CancellationToken.None);
                return false;
        }
    }

    /// <summary>What can be said of a tap before writing; null when it is to be written.</summary>
    private TapReceipt? Look(OfferedTap tap, SignedIn sender, HashSet<FactId> elsewhere)
    {
        if (tap.Fact is null)
        {
            return new TapReceipt(tap.Id, TapOutcome.Refused, null, FactFlags.None, tap.Code, tap.Why?.Sentence());
        }

        if (elsewhere.Contains(tap.Fact.Id))
        {
            return Receipt(tap, TapOutcome.Conflict);
        }

        if (known.TryGetValue(tap.Fact.Id, out var before))
        {
            return Receipt(tap, before.BodyHash == tap.BodyHash && before.Sender == sender.Id ? TapOutcome.Known : TapOutcome.Conflict);
        }

        return State.Snapshot is null
            ? new TapReceipt(tap.Id, TapOutcome.Refused, null, FactFlags.None, "wrong-phase", HeatRefusals.NotCalledYet.Sentence())
            : TapRules.Refuse(State, tap.Fact, sender.By(), sender.Lane) is { } refused
                ? new TapReceipt(tap.Id, TapOutcome.Refused, null, FactFlags.None, refused.Code, refused.Why.Sentence())
                : null;
    }

    private TapReceipt Receipt(OfferedTap tap, TapOutcome outcome)
    {
        var sequence = known.TryGetValue(tap.Fact!.Id, out var line) ? line.Sequence : (long?)null;
        var conflict = outcome == TapOutcome.Conflict;
        return new TapReceipt(
            tap.Id, outcome, conflict ? null : sequence, conflict ? FactFlags.None : State.Find(tap.Fact.Lane)?.FlagsOf(tap.Fact.Id) ?? FactFlags.None,
            conflict ? "conflict" : null, conflict ? HeatRefusals.TapIdTaken.Sentence() : null);
    }

    private NewLine Line(FactId id, string sender, string bodyHash, string body) => new(id, sender, time.Now, bodyHash, body);

    /// <summary>A fact as the ledger keeps it: canonical JSON.</summary>
    /// <exception cref="JsonException">It could not be read again: a number may be so large that its canonical form is none of ours.</exception>
    internal static string BodyOf(HeatFact fact)
    {
        using var document = JsonDocument.Parse(WireJson.Write(fact));
        var body = CanonicalJson.Text(document.RootElement);
        _ = WireJson.ReadFact(body);
        return body;
    }

    internal static string HashOf(JsonElement body) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(CanonicalJson.Text(body))));
}
