namespace LiveHeat.Rehearsal.Judging;

/// <summary>How often something goes wrong, each a probability. All guesses from the floor: common practice, no source.</summary>
/// <param name="NoRep">An athlete's rep does not count, a rep.</param>
/// <param name="WrongNoRep">The judge takes a no-rep back, a set.</param>
/// <param name="EarlyTap">The judge taps the set before it is done and undoes it, a set.</param>
/// <param name="DoubleTap">The finger bounces: the same tap twice, a set.</param>
/// <param name="TagFault">The next athlete leaves without the tag, a tag.</param>
public sealed record MistakeRates(double NoRep, double WrongNoRep, double EarlyTap, double DoubleTap, double TagFault)
{
    public static readonly MistakeRates Usual = new(0.025, 0.015, 0.02, 0.015, 0.02);

    public static readonly MistakeRates None = new(0, 0, 0, 0, 0);
}
