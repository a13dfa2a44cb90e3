using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Demo;

/// <summary>The movements of the demo competition, with standards in our own words.</summary>
/// <remarks>Paces are what a trained amateur holds in a relay, seconds a unit: common practice, no source.</remarks>
public static class DemoMovements
{
    public static readonly Movement WallBalls = new(
        "wall-ball", "wall balls", Unit.Reps, 2.3, 0.9,
        "Start: ball held in front, standing. Bottom: hips lower than the knees. End: the whole ball at or above the line, thrown from the same spot. "
        + "Caution: catch or let go, never reach back for a ball that goes astray; keep loose balls off the lane.",
        ["ball below the line", "hips above the knees", "ball dropped and thrown again"]);

    public static readonly Movement Burpees = new(
        "burpee", "burpees over the line", Unit.Reps, 3.3, 1.3,
        "Start: standing behind the line. Bottom: chest and thighs on the floor. End: both feet past the line, having left the floor together. "
        + "Caution: look where you land, the line may be wet.",
        ["chest not on the floor", "feet did not leave together", "stepped on the line"]);

    public static readonly Movement Shuttle = new(
        "shuttle", "shuttle run", Unit.M, 0.32, 0.15,
        "Lengths of 10 m. A foot and a hand touch the floor past the line at every turn; a length counts when the line is touched. "
        + "Caution: keep to your own lane and turn toward the wall clock, so that neighbours do not meet.",
        ["no hand past the line", "turned short of the line"]);

    public static readonly Movement Row = new(
        "row", "row", Unit.Cal, 2.6, 0.9,
        "The monitor starts at zero. The athlete stays seated, feet strapped, until it shows the number. "
        + "Caution: hair, laces and loose shirts away from the chain; do not let the handle fly.",
        ["left the seat too early", "monitor not at zero"]);

    public static readonly Movement Swings = new(
        "swing", "kettlebell swings", Unit.Reps, 1.9, 1.0,
        "Start: bell behind the knees. End: arms straight, bell above the eyes, knees and hips open, its bottom to the ceiling. "
        + "Caution: nobody stands in front of or behind the bell; dry the hands, set it down rather than throw it.",
        ["bell below the eyes", "hips not open", "elbows bent at the top"]);

    public static readonly Movement Carry = new(
        "carry", "sandbag carry", Unit.M, 0.7, 0.3,
        "The bag is off the floor and off the thighs. Counted in fives: a stretch of 5 m counts when both feet are past its mark. A dropped bag is taken up "
        + "again at the last mark. Caution: lift with a straight back; drop the bag only in front of you.",
        ["bag dragged or dropped", "mark not passed with both feet"]);

    public static readonly Movement Thrusters = new(
        "thruster", "dumbbell thrusters", Unit.Reps, 2.6, 1.2,
        "Start: bells at the shoulders. Bottom: hips lower than the knees. End: standing, arms straight, both bells over the middle of the body. "
        + "Caution: bells are set down, never dropped from overhead; look for rolling bells before you step back.",
        ["hips above the knees", "arms not straight", "ears not in front of the arms"]);

    public static readonly Movement SitUps = new(
        "sit-up", "sit-ups", Unit.Reps, 2.1, 1.0,
        "Bottom: shoulder blades on the floor, hands touch it behind the head. End: shoulders past the hips, hands touch the feet. "
        + "Caution: the mat may slip; put it back before going on.",
        ["hands did not touch the floor behind", "shoulders behind the hips"]);

    public static readonly Movement Lunges = new(
        "lunge", "plate lunges", Unit.M, 1.1, 0.5,
        "Plate overhead, arms straight. The back knee touches the floor at every step; both legs straight between steps. Counted in fives. "
        + "Caution: if the plate comes down, bring it down in front, not onto the head.",
        ["knee did not touch", "plate not overhead", "not straight between steps"]);
}
