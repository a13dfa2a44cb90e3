namespace LiveHeat.Testing.Paced;

/// <summary>Brier scores of a forecast and of two simpler rules.</summary>
public sealed class Brier
{
    private int count;
    private double own, pace, order;

    public double Own => own / count;

    /// <summary>The pace so far goes on.</summary>
    public double Pace => pace / count;

    /// <summary>What is ahead now stays ahead.</summary>
    public double Order => order / count;

    public void Add(bool happened, double chance, double byPace, double byOrder)
    {
        var truth = happened ? 1 : 0;
        count++;
        own += Math.Pow(chance - truth, 2);
        pace += Math.Pow(byPace - truth, 2);
        order += Math.Pow(byOrder - truth, 2);
    }
}
