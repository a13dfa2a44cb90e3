using LiveHeat.Engine.Paper;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Paper;

public sealed class PaperDraftTests
{
    [Fact]
    public void What_is_typed_is_what_the_card_says()
    {
        var draft = SomeCard.Draft();
        draft.At(1).Time = "0:32";
        draft.At(1).NoReps = "2";
        draft.At(2).Time = "1:05,5";
        draft.AtCap = "";

        var card = draft.Read();

        Assert.Empty(draft.Wrong);
        Assert.Equal(2, card.DoneSteps);
        Assert.Equal(new PaperLine(1, true) { Time = new PaperTime(32_000, PaperTime.SecondsMs), NoReps = 2 }, card.Find(1));
        Assert.Equal(new PaperLine(2, true) { Time = new PaperTime(65_500, PaperTime.TenthsMs) }, card.Find(2));
        Assert.Equal(new PaperLine(3, false), card.Find(3));
    }

    [Fact]
    public void All_done_up_to_here_ticks_those_before_and_unticks_those_after()
    {
        var draft = SomeCard.Draft();
        draft.At(8).Time = "3:00";
        draft.DoneUpTo(5);

        Assert.Equal([1, 2, 3, 4, 5], draft.Entries.Where(entry => entry.Done).Select(entry => entry.Step.Step));
        Assert.Equal("", draft.At(8).Time);
        Assert.Null(draft.Open);                         // step 6 is a tag
        draft.DoneUpTo(6);
        Assert.Equal(7, draft.Open!.Step);
    }

    [Fact]
    public void The_finish_time_is_that_of_the_last_step()
    {
        var draft = SomeCard.Draft();
        draft.Finish!.Time = "4:10.3";

        Assert.Equal((9, 250_300), (draft.Read().DoneSteps, draft.Read().Find(9)!.Time!.Value.HeatMs));
    }

    [Fact]
    public void What_cannot_be_read_is_told_at_its_line()
    {
        var draft = SomeCard.Draft();
        draft.At(1).Time = "soon";
        draft.At(2).Time = "1:75";
        draft.At(4).NoReps = "many";
        draft.AtCap = "11";                              // of 12 cal row: done to 2, then a tag
        draft.Read();

        Assert.Equal([0, 1, 2, 4], draft.Wrong.Keys.Order());
        Assert.Equal(PaperWords.BadTime, draft.Wrong[1]);
    }

    [Theory]
    [InlineData("10", true)]
    [InlineData("11", false)]
    [InlineData("-1", false)]
    [InlineData("2.5", false)]
    public void No_more_is_counted_than_the_open_set_has(string count, bool fine)
    {
        var draft = SomeCard.Draft();
        draft.DoneUpTo(3);
        draft.AtCap = count;
        var card = draft.Read();

        Assert.Equal(fine, draft.Wrong.Count == 0);
        Assert.Equal(fine ? 10 : null, card.AtCap);
    }

    [Fact]
    public void A_time_before_that_of_the_line_above_is_misread()
    {
        var draft = SomeCard.Draft();
        draft.At(1).Time = "1:10";
        draft.At(2).Time = "0:50";
        draft.At(4).Time = "1:30";
        draft.Read();

        Assert.Equal(PaperWords.EarlierThan(SomeCard.Draft().At(1).Step), Assert.Single(draft.Wrong).Value);
        Assert.Equal(2, Assert.Single(draft.Wrong).Key);
    }
}
