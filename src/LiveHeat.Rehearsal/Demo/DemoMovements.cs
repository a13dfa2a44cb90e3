using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Demo;

/// <summary>The movements of the demo competition, with standards in our own words.</summary>
/// <remarks>Standards and faults: common practice, no source. Paces are what a trained amateur holds in a relay, seconds a unit: common practice, no source.</remarks>
public static class DemoMovements
{
    public static readonly Movement WallBalls = new(
        "wall-ball", "wall balls", Unit.Reps, 2.3, 0.9,
        "Start: ball held in front, standing. Bottom: hips lower than the knees. End: the whole ball at or above the line, thrown from the same spot. "
        + "Caution: catch or let go, never reach back for a ball that goes astray; keep loose balls off the lane.",
        ["ball below the line", "hips above the knees", "ball dropped and thrown again"])
    {
        FullStandard = new Standard(
            "Standing, the ball held in front of the chest.", "The whole ball at or above the line.",
            ["Hips lower than the knees at the bottom.", "Thrown in one move from the bottom, from the same spot."],
            ["Letting the ball drop and taking it up again, if the next one begins from standing."],
            [
                new("ball below the line", "The whole ball was not at or above the line."),
                new("hips above the knees", "The hips were not lower than the knees at the bottom."),
                new("ball dropped and thrown again", "The ball came off the floor straight into the throw."),
            ],
            "Catch or let go, never reach back for a ball that goes astray; keep loose balls off the lane."),
    };

    public static readonly Movement Burpees = new(
        "burpee", "burpees over the line", Unit.Reps, 3.3, 1.3,
        "Start: standing behind the line. Bottom: chest and thighs on the floor. End: both feet past the line, having left the floor together. "
        + "Caution: look where you land, the line may be wet.",
        ["chest not on the floor", "feet did not leave together", "stepped on the line"])
    {
        FullStandard = new Standard(
            "Standing behind the line, facing it.", "Both feet on the floor past the line.",
            ["Chest and thighs on the floor at the bottom.", "Both feet leave the floor together and clear the line."],
            ["Stepping down and stepping up, as long as both feet clear the line together."],
            [
                new("chest not on the floor", "Chest or thighs did not touch the floor."),
                new("feet did not leave together", "One foot left the floor before the other."),
                new("stepped on the line", "A foot came down on the line."),
            ],
            "Look where you land, the line may be wet."),
    };

    public static readonly Movement Shuttle = new(
        "shuttle", "shuttle run", Unit.M, 0.32, 0.15,
        "Lengths of 10 m. A foot and a hand touch the floor past the line at every turn; a length counts when the line is touched. "
        + "Caution: keep to your own lane and turn toward the wall clock, so that neighbours do not meet.",
        ["no hand past the line", "turned short of the line"])
    {
        FullStandard = new Standard(
            "Both feet behind the line.", "A foot and a hand on the floor past the other line, which ends a length of 10 m.",
            ["A foot and a hand touch the floor past the line at every turn."],
            ["Any hand, and the same at every turn."],
            [
                new("no hand past the line", "The hand did not touch the floor past the line."),
                new("turned short of the line", "The foot turned before the line."),
            ],
            "Keep to your own lane and turn toward the wall clock, so that neighbours do not meet."),
    };

    public static readonly Movement Row = new(
        "row", "row", Unit.Cal, 2.6, 0.9,
        "The monitor starts at zero. The athlete stays seated, feet strapped, until it shows the number. "
        + "Caution: hair, laces and loose shirts away from the chain; do not let the handle fly.",
        ["left the seat too early", "monitor not at zero"])
    {
        FullStandard = new Standard(
            "Seated, feet strapped, the monitor at zero.", "The monitor shows the number.",
            ["Seated until the monitor shows the number."],
            ["Any damper setting; the monitor may be set to zero by somebody else."],
            [
                new("left the seat too early", "The athlete left the seat before the monitor showed the number."),
                new("monitor not at zero", "The monitor did not begin at zero, or was set anew on the way."),
            ],
            "Hair, laces and loose shirts away from the chain; do not let the handle fly."),
    };

    public static readonly Movement Swings = new(
        "swing", "kettlebell swings", Unit.Reps, 1.9, 1.0,
        "Start: bell behind the knees. End: arms straight, bell above the eyes, knees and hips open, its bottom to the ceiling. "
        + "Caution: nobody stands in front of or behind the bell; dry the hands, set it down rather than throw it.",
        ["bell below the eyes", "hips not open", "elbows bent at the top"])
    {
        FullStandard = new Standard(
            "The bell behind the knees.", "Arms straight, the bell above the eyes with its bottom to the ceiling, knees and hips open.",
            ["Both hands on the bell."],
            ["Any stance; setting the bell down between two swings."],
            [
                new("bell below the eyes", "The bell did not come above the eyes."),
                new("hips not open", "The hips were not open at the top."),
                new("elbows bent at the top", "The elbows were bent at the top."),
            ],
            "Nobody stands in front of or behind the bell; dry the hands, set it down rather than throw it."),
    };

    public static readonly Movement Carry = new(
        "carry", "sandbag carry", Unit.M, 0.7, 0.3,
        "The bag is off the floor and off the thighs. Counted in fives: a stretch of 5 m counts when both feet are past its mark. A dropped bag is taken up "
        + "again at the last mark. Caution: lift with a straight back; drop the bag only in front of you.",
        ["bag dragged or dropped", "mark not passed with both feet"])
    {
        FullStandard = new Standard(
            "The bag off the floor behind the mark.", "Both feet past the next mark: a stretch of 5 m.",
            ["The bag is off the floor and off the thighs.", "A dropped bag is taken up again at the last mark."],
            ["On a shoulder, in the arms or on the back."],
            [
                new("bag dragged or dropped", "The bag touched the floor on the way and was not taken back to the last mark."),
                new("mark not passed with both feet", "One foot or none was past the mark."),
            ],
            "Lift with a straight back; drop the bag only in front of you."),
    };

    public static readonly Movement Thrusters = new(
        "thruster", "dumbbell thrusters", Unit.Reps, 2.6, 1.2,
        "Start: bells at the shoulders. Bottom: hips lower than the knees. End: standing, arms straight, both bells over the middle of the body. "
        + "Caution: bells are set down, never dropped from overhead; look for rolling bells before you step back.",
        ["hips above the knees", "arms not straight", "ears not in front of the arms"])
    {
        FullStandard = new Standard(
            "Bells at the shoulders.", "Standing, arms straight, both bells over the middle of the body.",
            ["Hips lower than the knees at the bottom.", "One move from the bottom to the top."],
            ["One end of each bell on the shoulder; a squat to take them up as the first."],
            [
                new("hips above the knees", "The hips were not lower than the knees."),
                new("arms not straight", "An arm was bent when the bells came down again."),
                new("ears not in front of the arms", "The head was not through between the arms."),
            ],
            "Bells are set down, never dropped from overhead; look for rolling bells before you step back."),
    };

    public static readonly Movement SitUps = new(
        "sit-up", "sit-ups", Unit.Reps, 2.1, 1.0,
        "Bottom: shoulder blades on the floor, hands touch it behind the head. End: shoulders past the hips, hands touch the feet. "
        + "Caution: the mat may slip; put it back before going on.",
        ["hands did not touch the floor behind", "shoulders behind the hips"])
    {
        FullStandard = new Standard(
            "Shoulder blades on the floor, both hands touch it behind the head.", "Shoulders past the hips, both hands touch the feet.",
            ["The seat stays on the floor."],
            ["Feet together or apart; arms used for the swing."],
            [
                new("hands did not touch the floor behind", "The hands did not touch the floor behind the head."),
                new("shoulders behind the hips", "The shoulders did not come past the hips."),
            ],
            "The mat may slip; put it back before going on."),
    };

    public static readonly Movement Lunges = new(
        "lunge", "plate lunges", Unit.M, 1.1, 0.5,
        "Plate overhead, arms straight. The back knee touches the floor at every step; both legs straight between steps. Counted in fives. "
        + "Caution: if the plate comes down, bring it down in front, not onto the head.",
        ["knee did not touch", "plate not overhead", "not straight between steps"])
    {
        FullStandard = new Standard(
            "Standing behind the mark, the plate overhead, arms straight.", "Both feet past the next mark: a stretch of 5 m.",
            ["The back knee touches the floor at every step.", "Both legs are straight between two steps.", "The plate is overhead and the arms are straight."],
            ["A pause in standing with the plate overhead."],
            [
                new("knee did not touch", "The back knee did not touch the floor."),
                new("plate not overhead", "The plate came down, or an arm was bent."),
                new("not straight between steps", "The legs were not straight before the next step."),
            ],
            "If the plate comes down, bring it down in front, not onto the head."),
    };
}
