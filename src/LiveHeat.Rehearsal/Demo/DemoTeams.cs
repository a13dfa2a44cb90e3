using LiveHeat.Contracts.Setup;

namespace LiveHeat.Rehearsal.Demo;

/// <summary>The teams of the demo competition: all invented, first names only.</summary>
public static class DemoTeams
{
    /// <summary>Those of heat 1, in lane order.</summary>
    public static readonly IReadOnlyList<TeamSetup> First =
    [
        new("t-tin-weather", "Tin Weather", DemoWorkouts.Open, ["Maren", "Tariq", "Ioana", "Felix"]) { Home = "Harbour Street", Facts = ["Their first heat together."] },
        new("t-gravel-choir", "Gravel Choir", DemoWorkouts.Open, ["Kwame", "Sunniva", "Paolo", "Ximena"]) { AthletesSay = ["KWAH-meh", "", "", "shi-MEH-nah"], Home = "Quarry Road", Facts = ["They met in a choir that lost its rehearsal room."] },
        new("t-nine-buckets", "Nine Buckets", DemoWorkouts.Open, ["Ayşe", "Lorcan", "Thandi", "Viktor"]) { AthletesSay = ["eye-SHEH", "LOR-can", "", ""], Home = "the Old Pumping Station", Facts = ["Nine buckets is what they began with.", "Lorcan works nights and came straight from the shift."] },
        new("t-wet-matches", "Wet Matches", DemoWorkouts.Open, ["Priya", "Owain", "Selma", "Dario"]),
        new("t-borrowed-ladders", "Borrowed Ladders", DemoWorkouts.Open, ["Noor", "Jakub", "Amelie", "Bongani"]),
        new("t-loose-cobbles", "Loose Cobbles", DemoWorkouts.Open, ["Hedda", "Rafael", "Mei", "Anders"]),
        new("t-paper-lanterns", "Paper Lanterns", DemoWorkouts.Mixed, ["Linh", "Oisín", "Zofia", "Emeka"]) { Say = "PAY-per LAN-terns", AthletesSay = ["lin", "USH-een", "ZOF-ya", ""], Home = "Lantern Yard" },
        new("t-slow-lightning", "Slow Lightning", DemoWorkouts.Mixed, ["Greta", "Mateo", "Aroha", "Hamid"]),
    ];

    /// <summary>Those of heat 2, in lane order.</summary>
    public static readonly IReadOnlyList<TeamSetup> Second =
    [
        new("t-crooked-spoons", "Crooked Spoons", DemoWorkouts.Open, ["Inês", "Yusuf", "Britta", "Callum"]),
        new("t-rust-and-rope", "Rust & Rope", DemoWorkouts.Open, ["Malik", "Saoirse", "Goran", "Naomi"]) { AthletesSay = ["", "SEER-sha", "", ""], Home = "the Rope Works" },
        new("t-midnight-bakers", "Midnight Bakers", DemoWorkouts.Open, ["Tove", "Samir", "Chiara", "Piotr"]),
        new("t-hazel-and-iron", "Hazel & Iron", DemoWorkouts.Open, ["Kaja", "Luca", "Adaeze", "Tomas"]),
        new("t-kites-in-winter", "Kites in Winter", DemoWorkouts.Open, ["Yuki", "Bastian", "Leila", "Marlon"]),
        new("t-half-past-seven", "Half Past Seven", DemoWorkouts.Open, ["Eira", "Diego", "Wanjiru", "Stefan"]),
        new("t-chalk-post", "Chalk Post", DemoWorkouts.Open, ["Roza", "Henrik", "Tamsin", "Idris"]),
        new("t-left-hand-door", "Left Hand Door", DemoWorkouts.Mixed, ["Hanna", "Ravi", "Marisol", "Eoin"]),
        new("t-salted-plums", "Salted Plums", DemoWorkouts.Mixed, ["Aylin", "Milan", "Freya", "Jorge"]),
        new("t-seven-umbrellas", "Seven Umbrellas", DemoWorkouts.Mixed, ["Sina", "Ola", "Beatriz", "Kenji"]),
    ];

    public static IEnumerable<TeamSetup> All => First.Concat(Second);
}
