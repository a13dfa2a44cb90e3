using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Replays;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Words;

public sealed class KeptWordsTests
{
    private readonly HeatScript heat = new HeatScript().Then("""
        lane 1 seat w-1 taken as witness at -0:30
        start
        lane 1 step 1 done at 0:30 [plain]
        lane 1 step 1 done at 0:31 from seat w-1 [witness]
        lane 2 step 1 done at 0:40 arriving 1:10 [late]
        lane 2 step 2 done at 0:50 from seat nobody [held]
        void plain
        admit held
        """);

    [Fact]
    public void Who_recorded_it_is_a_name_and_a_duty() =>
        Assert.Equal(["Judge s-1, lane judge", "Judge w-1, witness"], new[] { "plain", "witness" }.Select(name => KeptWords.Who(Line(name), Book)));

    [Fact]
    public void A_void_names_who_and_why() => Assert.Equal(["voided by Hedda, head judge (“seen otherwise”)"], KeptWords.Of(Line("plain"), Book));

    [Fact]
    public void What_came_in_much_later_says_so() => Assert.Equal(["came in 30 s later"], KeptWords.Of(Line("late"), Book));

    [Fact]
    public void What_was_let_count_names_who_and_is_no_longer_held()
    {
        var words = KeptWords.Of(Line("held"), Book).ToList();
        Assert.Equal("let count by Hedda, head judge (“seen”)", words[0]);
        Assert.DoesNotContain("held for the head judge", words);
    }

    [Fact]
    public void A_tap_says_how_far_its_time_is_to_be_trusted_and_a_ruling_has_no_clock()
    {
        Assert.Equal("±12 ms", KeptWords.Within(Line("plain").Fact));
        Assert.Equal("", KeptWords.Within(Book.Lines.Single(line => line.Fact is HeatFact.Voided).Fact));
    }

    [Fact]
    public void The_athlete_is_the_steps() => Assert.Equal("Ann", KeptWords.Athlete(Line("plain").Fact, SomeHeat.Lane("start", 1)));

    private Heats.FactBook Book => SomeReplay.Book(heat);

    private FactLine Line(string name) => Book.Find(heat[name])!;
}
