using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Appeals;

/// <summary>An appeal as the facts have it.</summary>
/// <param name="Filed">Who, what about, when.</param>
/// <param name="Decided">What came of it; null while it is open.</param>
public sealed record AppealView(HeatFact.AppealFiled Filed, HeatFact.AppealDecided? Decided);

/// <summary>Appeals and warnings that stand, read from a heat's facts.</summary>
public static class AppealBook
{
    /// <summary>Open ones first, each in the order filed. What was taken back is left out.</summary>
    public static IReadOnlyList<AppealView> Of(FactBook book)
    {
        var decided = Standing<HeatFact.AppealDecided>(book).ToList();
        return [.. Standing<HeatFact.AppealFiled>(book).Select(filed => new AppealView(filed, decided.LastOrDefault(one => one.Target == filed.Id))).OrderBy(view => view.Decided is not null)];
    }

    /// <summary>A warning stands on the lane.</summary>
    public static bool IsWarned(FactBook book, LaneNumber lane) => Standing<HeatFact.Warned>(book).Any(warned => warned.Lane == lane);

    private static IEnumerable<T> Standing<T>(FactBook book)
        where T : HeatFact => book.Lines.Select(line => line.Fact).OfType<T>().Where(fact => !book.IsVoided(fact.Id));
}
