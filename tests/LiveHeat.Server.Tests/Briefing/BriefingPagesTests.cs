using System.Net;
using System.Text.RegularExpressions;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Briefing;

public sealed partial class BriefingPagesTests(SharedFloor shared) : FloorTest(shared)
{
    private const string Hostile = "</bdi><script>alert(1)</script>\"'&";

    private static readonly Movement GateBalls = new("gate-ball", "gate balls", Unit.Reps, 2.4, 1, "", ["past the gate", "second throw"])
    {
        FullStandard = new Standard(
            "Standing behind the rope.", "The ball is through the gate.", ["One throw only."], ["Any hand."],
            [new("past the gate", "The ball missed the gate."), new("second throw", "")], "Look before you throw.",
            "/api/setup/movements/gate-ball/picture?v=0123456789abcdef0123456789abcdef"),
    };

    private static int made = 500;

    [Fact]
    public async Task A_heat_that_is_only_set_up_is_told_whole()
    {
        var heat = await Plan(Ropes(), "t1", "t4");

        var text = await Text($"/briefing/{heat}");

        Assert.Contains($"Breakwater Relays Heat of {heat} : Ropes End", text, StringComparison.Ordinal);
        Assert.Contains("Open time cap 12:30 Before the rounds 20 cal row 6 rounds of 9 gate balls 2 and 3 kg 40 m sled carry counts as 4 · counted in steps of 10 After the rounds one lift the judge enters the load", text, StringComparison.Ordinal);
        Assert.Contains("Scaled time cap 10:00 6 rounds of 7 gate balls 1 kg", text, StringComparison.Ordinal);
        Assert.Contains("2 rounds in a row for each athlete, then the tag", text, StringComparison.Ordinal);
        Assert.Contains("What stands before the rounds is done by whoever begins.", text, StringComparison.Ordinal);
        Assert.Contains("across the finish line", text, StringComparison.Ordinal);
        Assert.Contains("1 Team 1 Open Ann, Bo, Cy", text, StringComparison.Ordinal);
        Assert.Contains("touch hands at every change", text, StringComparison.Ordinal);
        Assert.Contains("Start Standing behind the rope. Finish The ball is through the gate. On the way One throw only. Allowed Any hand. Caution Look before you throw. No-rep past the gate The ball missed the gate. second throw", text, StringComparison.Ordinal);
        Assert.All(BriefingWords.Cautions, caution => Assert.Contains(caution, text, StringComparison.Ordinal));
        Assert.Contains("<img src=\"/api/setup/movements/gate-ball/picture?v=0123456789abcdef0123456789abcdef\"", await Page($"/briefing/{heat}"), StringComparison.Ordinal);
    }

    [Fact]
    public void Rounds_by_the_clock_say_so_and_what_is_done_in_one_of_them_only_says_which()
    {
        string? Rounds(bool repeat) => BriefingWords.Rounds(
            Some.Workout() with { Scoring = new ScoringRule.MostWork() }, Some.Prescription(rounds: 3) with { Clock = new WorkClock(60_000, 30_000, repeat) });

        Assert.Equal(("3 rounds by the clock", "3 rounds by the clock, each again and again until it is over"), (Rounds(repeat: false), Rounds(repeat: true)));
        var byClock = Some.Workout(prescriptions: Some.Prescription(rounds: 3) with { Clock = new WorkClock(60_000, 30_000, true) }) with { Scoring = new ScoringRule.MostWork() };
        Assert.Equal(
            ["Each athlete has one round. When the clock begins the next one, the next in the line-up works; nobody tags. After the last athlete the first goes again.", "One athlete works at a time.", "What is done in every round counts; what is not done when a round is over is not made up."],
            RelayWords.Of(byClock));
        Assert.Equal("Of teams that the cap stops with the same score, whoever got there first is ahead.", RelayWords.Of(Some.Workout())[^1]);
        Assert.Equal("Teams that the cap stops with the same score share the place.", RelayWords.Of(Some.Workout() with { EqualWork = EqualWork.Shared })[^1]);
        Assert.Equal((false, true, true), (RelayWords.HasTags(byClock), RelayWords.HasTags(byClock with { Order = new RelayOrder.EachMovement() }), RelayWords.HasTags(Some.Workout())));
        Assert.Equal("round 2 only · 9 kg", BriefingWords.Set(new PrescribedSet("wall-ball", 10, Load: "9 kg") { InRound = 2 }, Some.Movement(), null, []).Notes);
    }

    [Fact]
    public async Task A_called_heat_is_told_as_it_was_called()
    {
        var heat = await Plan(Ropes(), "t1");
        await new TestHeat(Floor, heat).Do(Floor.Organiser, "call");
        var after = Ropes() with { Id = $"w-{heat}", Name = "Something Else" };
        (await Floor.Organiser.Put($"/api/setup/workouts/{after.Id}", after)).Fine();

        var text = await Text($"/briefing/{heat}");

        Assert.Contains("Ropes End", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Something Else", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_movement_of_one_division_says_so_and_is_left_out_where_that_division_does_not_stand()
    {
        var both = await Text($"/briefing/{await Plan(Ropes(), "t1", "t4")}");
        var scaled = await Text($"/briefing/{await Plan(Ropes(), "t4")}");

        Assert.Contains("sled carry Open only", both, StringComparison.Ordinal);
        Assert.DoesNotContain("gate balls Open only", both, StringComparison.Ordinal);
        Assert.DoesNotContain("sled carry", scaled, StringComparison.Ordinal);
        Assert.DoesNotContain("time cap 12:30", scaled, StringComparison.Ordinal);
        Assert.Contains("gate balls Start", scaled, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Names_stay_names()
    {
        var workout = Ropes() with { Name = Hostile, Movements = [.. Ropes().Movements.Select(movement => movement.Id == "gate-ball" ? movement with { Name = Hostile } : movement)] };
        var heat = await Plan(workout, "t1");

        foreach (var address in new[] { $"/briefing/{heat}", $"/briefing/{heat}?slides" })
        {
            var page = await Page(address);
            Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
            Assert.Contains(Hostile, WebUtility.HtmlDecode(page), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("/briefing/nowhere")]
    [InlineData("/briefing/nowhere?slides")]
    [InlineData("/briefing/%3Cscript%3Ealert(1)")]
    public async Task A_heat_that_is_unknown_says_what_to_do_next(string address)
    {
        var answer = await Floor.Visitor().Get(address);

        Assert.Equal((404, "text/html"), (answer.Status, answer.Message.Content.Headers.ContentType?.MediaType));
        Assert.Contains(BriefingWords.NoHeatNext, Plain(answer.Text), StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_nobody_has_written_yet_says_who_writes_it()
    {
        var workout = Ropes() with { Movements = [.. Ropes().Movements.Select(movement => movement with { Standard = "", Faults = [], FullStandard = null })] };

        var text = await Text($"/briefing/{await Plan(workout)}");

        Assert.Contains(BriefingWords.NobodyOnLanes, text, StringComparison.Ordinal);
        Assert.Contains("Scaled time cap", text, StringComparison.Ordinal);
        Assert.Contains(BriefingWords.NoStandard, text, StringComparison.Ordinal);
        Assert.Contains(BriefingWords.NoFaults, text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Slides_are_the_workout_the_relay_order_each_movement_with_its_faults_and_the_cautions()
    {
        var heat = await Plan(Ropes(), "t1", "t4");

        var page = await Page($"/briefing/{heat}?slides");

        var slides = Slide().Matches(page).Select(slide => $"{slide.Groups[1].Value}: {Plain(slide.Groups[2].Value)}");
        Assert.Equal(
            [
                "workout: Ropes End", "workout: Ropes End", "relay: Relay order", "movement: tag", "faults: tag", "movement: row", "faults: row", "movement: sled carry", "faults: sled carry",
                "movement: one lift", "faults: one lift", "movement: gate balls", "faults: gate balls", "cautions: Take care",
            ],
            slides);
        Assert.Contains("Open · time cap 12:30", Plain(page), StringComparison.Ordinal);
        Assert.Contains("past the gate The ball missed the gate.", Plain(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_set_says_that_its_end_is_the_tiebreak_or_the_end_of_a_part()
    {
        var ropes = Ropes();
        var marked = ropes with
        {
            Prescriptions =
            [
                ropes.Prescriptions[0] with { Tiebreak = new(0, 1), Parts = [new("first half", new TiebreakSet(3, 2)), new("second half", null)] },
                ropes.Prescriptions[1] with { Tiebreak = new(4, 1), Parts = [new("first half", new TiebreakSet(3, 1)), new("second half", null)] },
            ],
        };

        var text = await Text($"/briefing/{await Plan(marked, "t1", "t4")}");

        Assert.Contains("20 cal row tiebreak: the time when it is done 6 rounds of", text, StringComparison.Ordinal);
        Assert.Contains("counted in steps of 10 · in round 3 the end of “first half”, scored apart After the rounds", text, StringComparison.Ordinal);
        Assert.Contains("7 gate balls 1 kg · tiebreak: the time when it is done in round 4 · in round 3 the end of “first half”, scored apart", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_tiebreak_of_a_lift_is_one_of_its_attempts_and_by_the_clock_a_set_is_found_among_those_of_its_round()
    {
        var byOrder = new RelayOrder[] { new RelayOrder.InTurn(), new RelayOrder.EachMovement(), new RelayOrder.Together() }.Select(order =>
            SetMarks.Round(Some.Lifting(order: order), Some.Lifting(order: order, tiebreak: new(2, 3)).Prescriptions[0])[0].Single());
        Assert.Equal(["tiebreak: the time of athlete 2 at attempt 3", "tiebreak: the time of athlete 3 at attempt 2", "tiebreak: the time of attempt 3"], byOrder);

        var prescription = Some.Prescription(rounds: 2, round: [new PrescribedSet("wall-ball", 10) { InRound = 1 }, new PrescribedSet("row", 12)]) with { Clock = new WorkClock(60_000, 30_000, false), Tiebreak = new(2, 1) };
        var marks = SetMarks.Round(Some.Workout(), prescription);
        Assert.Equal((0, "tiebreak: the time when it is done in round 2"), (marks[0].Count(), marks[1].Single()));
    }

    [Fact]
    public async Task The_result_page_leads_there_before_the_call()
    {
        var heat = await Plan(Ropes(), "t1");

        Assert.Contains($"href=\"/briefing/{heat}\"", (await Floor.Visitor().Get($"/result/{heat}")).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("/briefing/", (await Floor.Visitor().Get("/result/nowhere")).Text, StringComparison.Ordinal);
    }

    /// <summary>Two rounds each; only the open division rows, carries and lifts.</summary>
    private static Workout Ropes()
    {
        var movements = Some.Workout().Movements.Where(movement => movement.Id != "wall-ball").Append(GateBalls).ToItems();
        return new Workout("", "Ropes End", new RelayOrder.Blocks(2), Counting.Sets, 1, FinishKind.Line, movements,
        [
            new("open", "Open", 750_000, 6, [new("row", 20)], [new("gate-ball", 9, Load: "2 and 3 kg"), new("carry", 40, Worth: 4, Increment: 10)], [new("bar", 1, Reading: true)]),
            new("scaled", "Scaled", 600_000, 6, [], [new("gate-ball", 7, Load: "1 kg")], []),
        ]);
    }

    private async Task<string> Plan(Workout workout, params string[] teams)
    {
        var number = Interlocked.Increment(ref made);
        var id = $"brief-{number}";
        (await Floor.Organiser.Put($"/api/setup/workouts/w-{id}", workout with { Id = $"w-{id}" })).Fine();
        var lanes = teams.Select((team, i) => new HeatSetupLane(new LaneNumber(i + 1), team)).ToItems();
        (await Floor.Organiser.Put($"/api/setup/heats/{id}", new HeatSetup(id, number, $"Heat of {id}", $"w-{id}", null, lanes))).Fine();
        return id;
    }

    private async Task<string> Page(string address) => (await Floor.Visitor().Get(address)).Fine().Text;

    private async Task<string> Text(string address) => Plain(await Page(address));

    private static string Plain(string html) => Spaces().Replace(WebUtility.HtmlDecode(Tag().Replace(html, " ")), " ").Trim();

    [GeneratedRegex("<section class=\"slide\" data-slide=\"([a-z]+)\">.*?<h1>(.*?)</h1>", RegexOptions.Singleline)]
    private static partial Regex Slide();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();
}
