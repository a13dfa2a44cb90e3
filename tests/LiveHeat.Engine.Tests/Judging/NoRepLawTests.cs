namespace LiveHeat.Engine.Judging;

public class NoRepLawTests
{
    /// <summary>Computed by counting: a lane of 2 reps, others of 3, two no-reps: C(x+1,x)·C(2-x+2,2-x)/C(6,2) = 6/15, 6/15, 3/15.</summary>
    [Fact]
    public void The_chances_are_those_of_the_negative_hypergeometric_distribution()
    {
        var chances = NoRepLaw.Chances(2, 3, 2);

        Assert.Equal([6 / 15.0, 6 / 15.0, 3 / 15.0], chances.Select(chance => Math.Round(chance, 12)));
    }

    [Fact]
    public void On_average_a_lane_has_its_share_of_the_floors_no_reps()
    {
        var chances = NoRepLaw.Chances(300, 2700, 150);

        Assert.Equal(1, chances.Sum(), 9);
        Assert.Equal(15, chances.Select((chance, k) => chance * k).Sum(), 6);       // a tenth of the reps, a tenth of 150
    }

    [Fact]
    public void Two_movements_add_up()
    {
        var sum = NoRepLaw.Sum([0.5, 0.5], [0.2, 0.8]);

        Assert.Equal([0.1, 0.5, 0.4], sum.Select(chance => Math.Round(chance, 12)));
    }
}
