using System.Text.RegularExpressions;
using LiveHeat.Contracts.Library;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Library;

public sealed partial class LibraryFilesTests
{
    private const int LongestFault = 28;
    private static readonly MovementLibrary English = LibraryFiles.In("en");

    /// <summary>Short words of gyms that a volunteer need not know.</summary>
    private static readonly string[] Jargon = ["amrap", "emom", "wod", "rx", "kip", "kipping", "pr", "1rm", "kb", "db", "bb", "hspu", "du", "ctb", "t2b", "oh", "metcon", "unbroken"];

    /// <summary>The one abbreviation that stands in a name: the shape of the body.</summary>
    private static readonly string[] AllowedCapitals = ["V-ups"];

    [Fact]
    public void There_are_at_least_forty_movements_each_with_an_id_and_a_name_of_its_own()
    {
        Assert.True(English.Movements.Count >= 40, $"{English.Movements.Count} movements.");
        Assert.Equal(English.Movements.Count, English.Movements.Select(movement => movement.Id).Distinct().Count());
        Assert.Equal(English.Movements.Count, English.Movements.Select(movement => movement.Name).Distinct().Count());
        Assert.All(English.Movements, movement => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", movement.Id));
        Assert.All(English.Movements, movement => Assert.Matches("^(V-|[a-z])[a-z' -]*$", movement.Name));
    }

    [Theory]
    [InlineData("deadlift")]
    [InlineData("dumbbell-snatch")]
    [InlineData("kettlebell-swing")]
    [InlineData("pull-up")]
    [InlineData("row-cal")]
    [InlineData("row-m")]
    [InlineData("ski-cal")]
    [InlineData("ski-m")]
    [InlineData("bike-cal")]
    [InlineData("bike-m")]
    [InlineData("run")]
    [InlineData("farmers-carry")]
    [InlineData("double-under")]
    [InlineData("rope-climb")]
    [InlineData("box-jump")]
    [InlineData("wall-ball")]
    [InlineData("sandbag-carry")]
    [InlineData("synchro-burpee")]
    [InlineData("heaviest-deadlift")]
    [InlineData(Movement.TagId)]
    public void Every_part_of_a_floor_is_there(string id) => Assert.Contains(English.Movements, movement => movement.Id == id);

    [Theory]
    [InlineData("row-cal", Unit.Cal)]
    [InlineData("row-m", Unit.M)]
    [InlineData("heaviest-snatch", Unit.Kg)]
    [InlineData("wall-ball", Unit.Reps)]
    public void A_unit_is_what_the_quantity_counts(string id, Unit unit) => Assert.Equal(unit, Of(id).Unit);

    [Fact]
    public void Faults_fit_on_a_button_and_differ()
    {
        foreach (var movement in English.Movements)
        {
            Assert.True(movement.Faults.Count >= 2, $"{movement.Id} has {movement.Faults.Count} faults.");
            Assert.Equal(movement.Faults.Count, movement.Faults.Select(fault => fault.Name).Distinct().Count());
            Assert.All(movement.Faults, fault => Assert.InRange(fault.Name.Length, 5, LongestFault));
            Assert.All(movement.Faults, fault => Assert.False(fault.Name.EndsWith('.') || char.IsUpper(fault.Name[0]), fault.Name));
        }
    }

    [Fact]
    public void Nobody_is_as_fast_as_the_fastest_on_average()
    {
        Assert.All(English.Movements, movement => Assert.True(
            movement.FastestSecondsPerUnit > 0 && movement.FastestSecondsPerUnit < movement.SecondsPerUnit, $"{movement.Id}: {movement.FastestSecondsPerUnit} and {movement.SecondsPerUnit}"));

        // Computed from the men's 100 m world record, 9.58 s (World Athletics, 2009, from memory): no relay runs faster than that.
        Assert.InRange(Of("run").FastestSecondsPerUnit, 0.05, 9.58 / 100);
    }

    [Fact]
    public void An_easier_variant_that_is_a_movement_is_one_of_the_library_and_another_one()
    {
        var ids = English.Movements.Select(movement => movement.Id).ToHashSet();
        Assert.All(English.Movements, movement => Assert.NotEmpty(movement.Variants));
        Assert.All(English.Movements, movement => Assert.All(movement.Variants, variant => Assert.True(
            variant.Movement is null || (ids.Contains(variant.Movement) && variant.Movement != movement.Id), $"{movement.Id}: {variant.Movement}")));
        Assert.True(English.Movements.Sum(movement => movement.Variants.Count(variant => variant.Movement is not null)) > 20);
    }

    [Fact]
    public void Everything_is_told_in_whole_sentences()
    {
        foreach (var movement in English.Movements)
        {
            Assert.NotEmpty(movement.Between);
            Assert.NotEmpty(movement.Allowed);
            Assert.All(Sentences(movement), sentence => Assert.Matches(@"^[A-Z].{6,}\.$", sentence));
            Assert.Equal("common practice, no source", movement.Source);
        }
    }

    [Fact]
    public void Nobody_and_nothing_is_called_by_a_name()
    {
        // A capital letter inside a sentence is somebody's name, a brand's, or an abbreviation.
        var capitals = English.Movements.SelectMany(movement => Sentences(movement).Concat(Names(movement)).SelectMany(text => InnerCapital().Matches(text).Select(match => match.Value.Trim())));
        Assert.Equal([], capitals.Except(AllowedCapitals));
    }

    [Fact]
    public void No_word_needs_explaining()
    {
        var words = English.Movements.SelectMany(movement => Sentences(movement).Concat(Names(movement)).SelectMany(text => Word().Matches(text.ToLowerInvariant()).Select(match => match.Value)));
        Assert.Equal([], words.Intersect(Jargon));
    }

    [Fact]
    public void A_movement_can_be_done_in_a_workout_as_it_stands()
    {
        foreach (var movement in English.Movements.Where(movement => movement.Id != Movement.TagId))
        {
            var workout = new Workout("w", "Low Tide", new RelayOrder.InTurn(), Counting.Sets, 1, FinishKind.None, [movement.ToMovement("m1")],
                [new Prescription("open", "Open", 600_000, 2, [], [new PrescribedSet("m1", 10)], [])]);

            var plan = Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(workout, new LineUp("t", "T", "open", ["Ann", "Bo"]))).Relay;

            Assert.Equal(movement.Faults.Select(fault => fault.Name), plan.Steps[0].Faults);
            Assert.Equal((movement.Start, movement.Caution), (workout.Movements[0].FullStandard!.Start, workout.Movements[0].FullStandard!.Caution));
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("xx")]
    [InlineData("../en")]
    [InlineData("en-GB")]
    public void What_is_not_translated_is_told_in_English(string? language) => Assert.Same(English, LibraryFiles.In(language));

    private static LibraryMovement Of(string id) => English.Movements.Single(movement => movement.Id == id);

    private static IEnumerable<string> Sentences(LibraryMovement movement) =>
        new[] { movement.Start, movement.Finish }.Concat(movement.Between).Concat(movement.Allowed).Concat(movement.Faults.Select(fault => fault.How))
            .Concat(movement.Variants.Select(variant => variant.How)).Concat(movement.Caution is { } caution ? [caution] : []);

    private static IEnumerable<string> Names(LibraryMovement movement) =>
        movement.Faults.Select(fault => fault.Name).Concat(movement.Variants.Select(variant => variant.Name)).Append(movement.Name);

    /// <summary>A capital that begins neither the text nor a sentence.</summary>
    [GeneratedRegex(@"(?<![.:?]) [A-Z][\w-]*|(?<=\w)[A-Z]\w*")]
    private static partial Regex InnerCapital();

    [GeneratedRegex("[a-z0-9]+")]
    private static partial Regex Word();
}
