using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Standings;

public class NewsTests
{
    /// <summary>What the last line of the score brings, as "kind lane[>other]".</summary>
    private static string News(string score)
    {
        var after = HeatScript.Play(score);
        var before = HeatState.Fold(after.Heat, after.Entries.SkipLast(1));
        return string.Join(' ', Standings.News.Between(before, LiveOrder.Of(before), after, LiveOrder.Of(after), after.Entries[^1].Fact)
            .Select(item => $"{item.Kind} {item.Lane}{(item.Other is { } other ? $">{other}" : "")}"));
    }

    [Fact]
    public void A_team_that_takes_the_lead_is_news() => Assert.Equal("Lead 2>1", News("""
        start
        lane 1 step 1 done at 0:40
        lane 2 step 2 done at 1:05
        """));

    [Fact]
    public void A_team_that_passes_another_is_news() => Assert.Equal("Overtake 3>2", News("""
        start
        lane 1 step 2 done at 1:00
        lane 2 step 1 done at 0:50
        lane 3 step 1 done at 0:49
        """));

    [Fact]
    public void A_tag_is_news() => Assert.Equal("Tag 1", News("""
        start
        lane 1 step 2 done at 1:00
        lane 1 tag 3 at 1:02
        """));

    [Fact]
    public void A_finish_is_news_and_says_no_more() => Assert.Equal("Finish 2", News("""
        start
        lane 1 step 8 done at 5:00
        lane 2 step 9 done at 5:10
        """));

    [Fact]
    public void A_team_that_stops_is_news() => Assert.Equal("Stopped 1", News("""
        start
        lane 1 step 2 done at 1:00
        lane 1 stopped medical at 2:00
        """));

    [Theory]
    [InlineData("lane 1 no-rep step 3 at 1:05")]
    [InlineData("lane 1 count 1 of step 4 at 1:05")]
    [InlineData("lane 1 step 2 done at 1:05")]
    [InlineData("lane 1 undo last at 1:05")]
    [InlineData("warn lane 1 at 1:05")]
    [InlineData("end at 1:05")]
    public void What_moves_nobody_on_is_no_news(string line) => Assert.Equal("", News($"""
        start
        lane 1 step 2 done at 1:00
        {line}
        """));

    [Fact]
    public void News_carries_the_fact_behind_it_and_its_heat_time()
    {
        var after = HeatScript.Play("""
            start
            lane 1 tag 3 at 1:02
            """);
        var before = HeatState.Fold(after.Heat, after.Entries.SkipLast(1));
        var item = Assert.Single(Standings.News.Between(before, LiveOrder.Of(before), after, LiveOrder.Of(after), after.Entries[^1].Fact), item => item.Kind == NewsKind.Tag);

        Assert.Equal(new NewsItem(after.Head, HeatScript.At("1:02"), 62_000, NewsKind.Tag, Some.Lane(1), null, 3), item);
    }
}
