using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Timing;
using LiveHeat.Server.Time;
using LiveHeat.Testing.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Server.Board;

/// <summary>What the organiser tells the hall over the boards.</summary>
public sealed class BoardMessagesTests(SharedFloor shared) : FloorTest(shared)
{
    private Instant Now => Floor.App.Services.GetRequiredService<Timebase>().Now;

    [Fact]
    public async Task It_comes_with_the_programme_until_it_is_taken_away()
    {
        var put = (await Floor.Organiser.Put("/api/board/message", new BoardMessage("  Lunch until half past one  "))).Read<BoardMessage>();
        Assert.Equal("Lunch until half past one", put.Text);
        Assert.Equal("Lunch until half past one", (await Program()).Message?.Text);

        (await Floor.Organiser.Put("/api/board/message", new BoardMessage("Heat 4 starts ten minutes later"))).Fine();
        Assert.Equal("Heat 4 starts ten minutes later", (await Program()).Message?.Text);

        (await Floor.Organiser.Put("/api/board/message", new BoardMessage(" "))).Fine();
        Assert.Null((await Program()).Message);
        Assert.DoesNotContain("message", (await Floor.Visitor().Get("/api/program")).Fine().Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_ends_by_itself_at_its_time()
    {
        (await Floor.Organiser.Put("/api/board/message", new BoardMessage("A short break", Now + 60_000))).Fine();
        Assert.Equal("A short break", (await Program()).Message?.Text);
        (await Floor.Organiser.Put("/api/board/message", new BoardMessage("A short break", Now + -1))).Fine();
        Assert.Null((await Program()).Message);
    }

    [Fact]
    public async Task Only_the_organiser_writes_it_and_only_what_a_board_can_show()
    {
        (await Floor.Organiser.Put("/api/board/message", new BoardMessage(""))).Fine();
        Assert.Equal(401, (await Floor.Visitor().Put("/api/board/message", new BoardMessage("Go home"))).Status);
        var tooLong = await Floor.Organiser.Put("/api/board/message", new BoardMessage(new string('a', 161)));
        Assert.Equal(400, tooLong.Status);
        Assert.Contains("161 characters", tooLong.Text, StringComparison.Ordinal);
        Assert.Equal(400, (await Floor.Organiser.Put("/api/board/message", new BoardMessage("two\nlines"))).Status);
        Assert.Null((await Program()).Message);
    }

    private async Task<ProgramList> Program() => (await Floor.Visitor().Get("/api/program")).Read<ProgramList>();
}
