using System.Diagnostics;
using System.Globalization;
using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Standings;
using LiveHeat.Testing;
using LiveHeat.Testing.Paced;

namespace LiveHeat.Measure;

/// <summary>How good forecasts are on simulated heats whose truth is known, and how long one takes.</summary>
internal static class Forecasts
{
    private const int Lanes = 20;

    /// <summary>A forecast of so many lanes, with catches and next tags, may take so long, milliseconds.</summary>
    private const double Budget = 2;

    public static int Run(string[] args)
    {
        if (Array.IndexOf(args, "--replay") is var replay and >= 0)
        {
            return Replayed.Run(args[(replay + 1)..]);
        }

        var halls = Option(args, "--halls", 200);
        var seed = Option(args, "--seed", 1);
        var made = Calibration.Of(halls, seed);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"""
            {made.Forecasts} forecasts in {2 * halls} heats of ten lanes, from the first third of each heat on (seed {seed})
            80 % intervals held            {made.Coverage:P1}
            Brier score, beats the cap     {made.Cap.Own:0.0000}   pace so far goes on {made.Cap.Pace:0.0000}   order now stands {made.Cap.Order:0.0000}
            Brier score, wins              {made.Wins.Own:0.0000}   pace so far goes on {made.Wins.Pace:0.0000}   order now stands {made.Wins.Order:0.0000}
            """));
        Moments(made);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"80 % intervals held, few long sets, {Calibration.Of(halls, seed, PacedShape.LongSets, 6).Coverage:P1}; two divisions {Calibration.Of(halls, seed, PacedShape.TwoDivisions).Coverage:P1}"));
        Factors(halls, seed);
        var fast = Speed();
        return fast && made.Coverage is >= 0.75 and <= 0.85 && made.Cap.Own < Math.Min(made.Cap.Pace, made.Cap.Order) && made.Wins.Own < Math.Min(made.Wins.Pace, made.Wins.Order) ? 0 : 1;
    }

    private static void Moments(Calibration made)
    {
        for (var i = 0; i < Calibration.Moments.Count; i++)
        {
            var moment = made.ByMoment[i];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  at {Calibration.Moments[i]:0.00} of the first finish    {moment.Share:P1}, standard error {moment.Error:P1}"));
        }
    }

    /// <summary>What it is worth that each prescription has factors of its own from heat to heat.</summary>
    private static void Factors(int halls, int seed)
    {
        foreach (var apart in new[] { 0, 0.1, 0.2 })
        {
            var (own, one) = (Calibration.SecondHeats(halls, seed, apart, oneFactor: false), Calibration.SecondHeats(halls, seed, apart, oneFactor: true));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"second heats, movements {apart:P0} apart between two prescriptions: a factor for each held {own.Coverage:P1} (first moment {own.ByMoment[0].Share:P1}), off by {own.Off:P2}; one for both {one.Coverage:P1} ({one.ByMoment[0].Share:P1}), {one.Off:P2}"));
        }
    }

    /// <returns>Whether it is within the budget.</returns>
    private static bool Speed()
    {
        var random = new Random(3);
        var truth = PacedHeat.From(random, PacedHeat.Hall(random), Lanes);
        var at = truth.Finishes.Min() / 2;
        var heat = truth.At(at);
        var own = Median(() => Forecast.Of(heat, Some.Go + at, PacePriors.None, 1).Count);
        var whole = Median(() => Forecast.Whole(heat, Some.Go + at, PacePriors.None, 1).Lanes.Count);
        var order = Median(() => LiveOrder.Of(heat).Count);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"one forecast of {Lanes} lanes     {own:0.000} ms, {own / order:0.0} times the live order of the same heat (median of 200); with catches and next tags {whole:0.000} ms (budget {Budget:0} ms: {(whole <= Budget ? "kept" : "EXCEEDED")})"));
        return whole <= Budget;
    }

    private static double Median(Func<int> work)
    {
        for (var i = 0; i < 50; i++)
        {
            work();
        }

        return Enumerable.Range(0, 200).Select(_ =>
        {
            var from = Stopwatch.GetTimestamp();
            work();
            return Stopwatch.GetElapsedTime(from).TotalMilliseconds;
        }).Order().ElementAt(100);
    }

    private static int Option(string[] args, string name, int usual) =>
        Array.IndexOf(args, name) is var at and >= 0 && at + 1 < args.Length ? int.Parse(args[at + 1], CultureInfo.InvariantCulture) : usual;
}
