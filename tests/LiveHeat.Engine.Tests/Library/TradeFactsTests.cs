using System.Globalization;
using LiveHeat.Contracts.Library;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Library;

/// <summary>What the trade agrees on, as the library tells it. Common practice, no source, unless said.</summary>
public sealed class TradeFactsTests
{
    // The inch is 25.4 mm exactly (international yard and pound agreement of 1959; ISO 31-1, from memory).
    private const decimal CmPerInch = 2.54m;

    [Theory]
    [InlineData("box-jump")]
    [InlineData("box-jump-over")]
    [InlineData("box-step-over")]
    [InlineData("box-step-up")]
    public void Boxes_are_20_24_and_30_inches_high_which_is_told_in_centimetres_too(string id)
    {
        var told = string.Join(" ", Of(id).Between);

        Assert.Equal(["50.8", "61.0", "76.2"], new[] { 20, 24, 30 }.Select(Cm));
        Assert.Contains("20, 24 or 30 in", told, StringComparison.Ordinal);
        Assert.All(new[] { 20, 24, 30 }, inches => Assert.Contains(Cm(inches), told, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("handstand-push-up-strict")]
    [InlineData("handstand-push-up-kipping")]
    public void A_handstand_push_up_begins_and_ends_stretched_with_only_the_heels_on_the_wall(string id)
    {
        var movement = Of(id);
        Says(movement.Start, "straight arms", "only the heels");
        Says(movement.Finish, "elbows, hips and knees straight", "nothing but the heels on the wall");
        // 24 in across, computed: 60.96 cm.
        Says(string.Join(" ", movement.Between), "inside a box", $"24 in ({Math.Round(24 * CmPerInch)} cm) across", "head itself, not the hair");
        Faults(movement, "hand out of the box", "arms not straight", "head did not touch");
    }

    [Fact]
    public void Only_in_the_strict_one_a_body_on_the_wall_is_a_fault()
    {
        var (strict, swung) = (Of("handstand-push-up-strict"), Of("handstand-push-up-kipping"));
        Faults(strict, "body touched the wall");
        Assert.DoesNotContain("body touched the wall", swung.Faults.Select(fault => fault.Name));
        Says(string.Join(" ", swung.Allowed), "swing");
        Assert.DoesNotContain(strict.Allowed, sentence => sentence.Contains("swing", StringComparison.Ordinal));
        Assert.Contains("hand-release-push-up", strict.Variants.Select(variant => variant.Movement));
        Assert.Contains("hand-release-push-up", swung.Variants.Select(variant => variant.Movement));
    }

    [Fact]
    public void A_hand_release_push_up_rises_in_one_piece()
    {
        var movement = Of("hand-release-push-up");
        Says(movement.Start, "plank on straight arms");
        Says(string.Join(" ", movement.Between), "chest goes to the floor", "both hands leave the floor", "Hips and shoulders rise together", "without a kick or a swing");
        Faults(movement, "knees on the floor", "body rose like a worm");
    }

    [Fact]
    public void A_devils_press_swings_up_in_one_go()
    {
        var movement = Of("devils-press");
        Says(movement.Start, "hands on the bells", "chest on the bells or on the floor");
        Says(string.Join(" ", movement.Between), "step or jump in under", "in one go", "neither stop on the body or the shoulders nor touch them");
        Says(movement.Finish, "over the shoulders");
        Says(string.Join(" ", movement.Allowed), "Stepping up");
        Faults(movement, "let go on the way down", "bells touched the body", "bells stopped on the way");
    }

    [Fact]
    public void A_box_jump_over_is_with_both_feet()
    {
        var movement = Of("box-jump-over");
        Says(string.Join(" ", movement.Between), "Both feet leave the floor together", "Both feet touch the box", "Both feet land");
        Says(string.Join(" ", movement.Allowed), "Clearing the whole box");
        Faults(movement, "one-foot take-off", "hand on the box");
    }

    [Fact]
    public void A_box_step_over_needs_both_feet_on_top_and_no_tall_standing()
    {
        var movement = Of("box-step-over");
        Says(string.Join(" ", movement.Between), "Both feet touch the top of the box before one of them goes down");
        Says(string.Join(" ", movement.Allowed), "standing tall is not required");
        Faults(movement, "not both feet on top");
        Assert.DoesNotContain(movement.Faults, fault => fault.Name.Contains("hips", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_the_touch_of_hands_the_next_athlete_may_not_start()
    {
        var tag = Of(Movement.TagId);
        Says(string.Join(" ", tag.Between), "hands of the two touch at every change", "neither starts");
        Faults(tag, "no touch", "left too early");
    }

    private static LibraryMovement Of(string id) => LibraryFiles.In("en").Movements.Single(movement => movement.Id == id);

    private static string Cm(int inches) => (inches * CmPerInch).ToString("0.0", CultureInfo.InvariantCulture);

    private static void Says(string told, params string[] parts) => Assert.All(parts, part => Assert.Contains(part, told, StringComparison.Ordinal));

    private static void Faults(LibraryMovement movement, params string[] names) => Assert.Subset(movement.Faults.Select(fault => fault.Name).ToHashSet(), names.ToHashSet());
}
