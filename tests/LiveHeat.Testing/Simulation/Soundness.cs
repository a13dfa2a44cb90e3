using System.Globalization;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using LiveHeat.Engine.Timing;
using LiveHeat.Ledger.Facts;

namespace LiveHeat.Testing.Simulation;

/// <summary>What must be so after every performance, whatever went wrong in it. Answers with sentences; none when all is well.</summary>
internal static class Soundness
{
    /// <summary>Of one performance by itself.</summary>
    public static IEnumerable<string> Of(Played played) =>
        [.. played.Trouble, .. EveryTapOnce(played), .. InTheirOrder(played), .. WithinUncertainty(played), .. Chained(played)];

    private static IEnumerable<string> EveryTapOnce(Played played)
    {
        var lines = played.Lines.ToLookup(line => line.Id);
        foreach (var tap in played.Taps)
        {
            var found = lines[tap.Id].ToList();
            if (found.Count != 1)
            {
                yield return $"{tap.Phone}: {Words(tap)} is on the ledger {found.Count} times.";
            }
            else if (found[0].Body != tap.Body)
            {
                yield return $"{tap.Phone}: {Words(tap)} stands as {found[0].Body} and was {tap.Body}.";
            }
        }

        var known = played.Taps.Select(tap => tap.Id).ToHashSet();
        foreach (var line in played.Lines.Where(line => WireJson.ReadFact(line.Body) is HeatFact.Floor && !known.Contains(line.Id)))
        {
            yield return $"The ledger's {line.Sequence} ({line.Id}) is on no phone.";
        }

        foreach (var lane in played.Plot.Lanes)
        {
            var told = played.Taps.Where(tap => tap.Lane == lane.Lane).Select(tap => tap.Moment.Number).Order().ToList();
            if (!told.SequenceEqual(lane.Story.Select(moment => moment.Number)))
            {
                yield return $"Lane {lane.Lane}: the judge saw {lane.Story.Count} things and the phones have {told.Count}.";
            }
        }
    }

    /// <summary>A device's taps keep their counter order, on the ledger and in what the fold plays.</summary>
    private static IEnumerable<string> InTheirOrder(Played played)
    {
        foreach (var box in played.Lines.Where(line => WireJson.ReadFact(line.Body) is HeatFact.Floor).GroupBy(line => line.Id.Outbox))
        {
            if (!Ascending(box.OrderBy(line => line.Sequence).Select(line => line.Id.Counter)))
            {
                yield return $"The taps of {box.First().Sender} came to the ledger out of their order.";
            }
        }

        foreach (var lane in played.State.Lanes)
        {
            var order = TapOrder.Arrange(played.State.EntriesOf(lane.Lane).Where(entry => entry.Fact is HeatFact.Floor));
            if (!order.GroupBy(tap => tap.Tap.Id.Outbox).All(box => Ascending(box.Select(tap => tap.Tap.Id.Counter))))
            {
                yield return $"Lane {lane.Lane}: the fold plays a phone's taps out of their order.";
            }
        }
    }

    private static IEnumerable<string> WithinUncertainty(Played played)
    {
        var moments = played.Taps.ToDictionary(tap => tap.Id);
        foreach (var line in played.Lines)
        {
            if (WireJson.ReadFact(line.Body) is HeatFact.Floor tap && moments.TryGetValue(tap.Id, out var made)
                && Wrong(tap.Instant - played.GoAt, tap.UncertaintyMs, made) is { } wrong)
            {
                yield return $"{made.Phone}: the instant of {Words(made)} {wrong}";
            }
        }

        foreach (var lane in played.State.Lanes)
        {
            foreach (var split in lane.Splits.Append(lane.Finish).Where(split => split is not null).Select(split => split!.Value))
            {
                if (Wrong(split.LaneMs, split.UncertaintyMs, moments[split.Fact]) is { } wrong)
                {
                    yield return $"Lane {lane.Lane}: the heat time of {Words(moments[split.Fact])} {wrong}";
                }
            }
        }
    }

    private static string? Wrong(double heatMs, int uncertaintyMs, MadeTap made) =>
        Math.Abs(heatMs - made.Moment.AtMs) <= uncertaintyMs + Dust ? null : string.Create(
            CultureInfo.InvariantCulture, $"is {heatMs} ms within {uncertaintyMs} and was truly {made.Moment.AtMs} ms: wrong by {heatMs - made.Moment.AtMs:F3}.");

    /// <summary>What a double loses at instants of 1.8e12 ms.</summary>
    private const double Dust = 0.001;

    private static IEnumerable<string> Chained(Played played)
    {
        if (HashChain.Verify(played.Lines.Select(line => line.Link)) is { } broken)
        {
            yield return $"The hash chain breaks at {broken}.";
        }
    }

    private static bool Ascending(IEnumerable<long> counters) => counters.Zip(counters.Skip(1)).All(pair => pair.First < pair.Second);

    private static string Words(MadeTap tap) => $"lane {tap.Lane} no. {tap.Moment.Number} {tap.Moment.Fact} {tap.Moment.Step}";
}
