namespace LiveHeat.Engine.Wire;

/// <summary>Every fact as text, to the letter: what stands on a ledger once must be readable for ever. A line is never changed; a new field is a new line.</summary>
internal static class FactPins
{
    /// <summary>A whole heat, as it stands in a call.</summary>
    private const string Snapshot =
        """{"competition":"Breakwater Relays","title":"Heat 1","workout":{"id":"w1","name":"Low Tide","order":{"kind":"blocks","size":2},"counting":"sets","checkpointEvery":5,"finish":"line","movements":[{"id":"wall-ball","name":"wall balls","unit":"reps","secondsPerUnit":2,"fastestSecondsPerUnit":0.5,"standard":"Below parallel, above the line.","faults":["short of the line","not low enough"]}],"prescriptions":[{"division":"open","divisionName":"Open","capMs":600000,"rounds":3,"before":[],"round":[{"movement":"wall-ball","quantity":18,"worth":null,"increment":1,"load":"6 kg","reading":false}],"after":[{"movement":"wall-ball","quantity":1,"worth":0,"increment":1,"load":null,"reading":true}]}]},"lanes":[{"lane":2,"team":"t2","name":"Team 2","division":"open","athletes":["Ann","Bo"]}],"rounding":"up-tenth","timekeepers":"athletics","handTimingMs":95,"rerunOf":null}""";

    public static readonly IReadOnlyList<string> All =
    [
        """{"fact":"step-done","timeKnown":true,"step":5,"lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":{"monoMs":81234.5,"wallMs":1795600841010,"offsetMs":190.25},"id":"Zm9vYmFyYmF6cXV4MTIzNA.1","instant":1795600841200}""",
        """{"fact":"tag-made","timeKnown":false,"step":6,"lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.2","instant":1795600841200}""",
        """{"fact":"value-entered","value":132.5,"timeKnown":true,"step":7,"lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.3","instant":1795600841200}""",
        """{"fact":"attempt-judged","load":102.5,"good":false,"fault":"not locked out","timeKnown":true,"step":7,"lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.49","instant":1795600841200}""",
        """{"fact":"count-reached","count":14,"step":5,"lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.4","instant":1795600841200}""",
        """{"fact":"no-rep","fault":"not low enough","step":5,"lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.5","instant":1795600841200}""",
        """{"fact":"tag-fault","fault":"no touch","step":6,"lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.6","instant":1795600841200}""",
        """{"fact":"athlete-working","athlete":3,"step":5,"lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.7","instant":1795600841200}""",
        """{"fact":"reps-at-cap","count":9,"step":5,"lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.8","instant":1795600841200}""",
        """{"fact":"finish-timed","lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.9","instant":1795600841200}""",
        """{"fact":"lane-stopped","reason":"medical","lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.10","instant":1795600841200}""",
        """{"fact":"undone","target":"Zm9vYmFyYmF6cXV4MTIzNA.1","lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.11","instant":1795600841200}""",
        """{"fact":"head-judge-called","note":"which line?","lane":2,"seat":"s-2","uncertaintyMs":12,"start":"k7f3","plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.12","instant":1795600841200}""",
        """{"fact":"score-read-back","agreed":true,"name":"Ann","lane":2,"seat":"s-2","uncertaintyMs":12,"start":null,"plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.13","instant":1795600841200}""",
        $$"""{"fact":"heat-called","snapshot":{{Snapshot}},"by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.14","instant":1795600841200}""",
        $$"""{"fact":"call-replaced","snapshot":{{Snapshot}},"by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.15","instant":1795600841200}""",
        """{"fact":"seat-taken","seat":"s-2","duty":"primary","lane":2,"reason":"","by":{"signIn":"in-2","name":"Judge 2","role":"judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.16","instant":1795600841200}""",
        """{"fact":"seat-given-up","seat":"s-2","lane":2,"reason":"","by":{"signIn":"in-2","name":"Judge 2","role":"judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.17","instant":1795600841200}""",
        """{"fact":"lane-ready","seat":"s-2","lane":2,"reason":"","by":{"signIn":"in-2","name":"Judge 2","role":"judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.18","instant":1795600841200}""",
        """{"fact":"lanes-overridden","lanes":[2,3],"reason":"phones in hand","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.19","instant":1795600841200}""",
        """{"fact":"lane-withdrawn","lane":2,"reason":"not here","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.20","instant":1795600841200}""",
        """{"fact":"start-scheduled","start":"k7f3","goAt":1795600851200,"by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.21","instant":1795600841200}""",
        """{"fact":"start-observed","start":"k7f3","goAt":1795600841200,"uncertaintyMs":500,"reason":"seen on video","by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.22","instant":1795600841200}""",
        """{"fact":"start-recalled","start":"k7f3","reason":"false start","by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.23","instant":1795600841200}""",
        """{"fact":"heat-halted","reason":"fire alarm","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.24","instant":1795600841200}""",
        """{"fact":"heat-resumed","reason":"all clear","by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.25","instant":1795600841200}""",
        """{"fact":"call-returned","reason":"start again","by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.26","instant":1795600841200}""",
        """{"fact":"heat-ended","reason":"cap","by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.27","instant":1795600841200}""",
        """{"fact":"sent-back","step":4,"lane":2,"reason":"skipped a set","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.28","instant":1795600841200}""",
        """{"fact":"reps-owed","step":4,"reps":2,"lane":2,"reason":"two short","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.29","instant":1795600841200}""",
        """{"fact":"lane-held","movesCap":true,"lane":2,"reason":"rower broke","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.30","instant":1795600841200}""",
        """{"fact":"lane-resumed","lane":2,"reason":"rower changed","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.31","instant":1795600841200}""",
        """{"fact":"time-adjusted","adjustMs":-12000,"movesCap":false,"lane":2,"reason":"blocked by a judge","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.32","instant":1795600841200}""",
        """{"fact":"line-up-changed","fromStep":4,"athletes":["Ann","Dot"],"lane":2,"reason":"injury","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.33","instant":1795600841200}""",
        """{"fact":"variant-taken","fromStep":4,"prescription":"scaled","lane":2,"reason":"asked for it","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.34","instant":1795600841200}""",
        """{"fact":"voided","target":"Zm9vYmFyYmF6cXV4MTIzNA.1","reason":"wrong lane","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.35","instant":1795600841200}""",
        """{"fact":"admitted","target":"Zm9vYmFyYmF6cXV4MTIzNA.1","reason":"seen","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.36","instant":1795600841200}""",
        """{"fact":"reason-given","target":"Zm9vYmFyYmF6cXV4MTIzNA.30","reason":"chain came off","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.37","instant":1795600841200}""",
        """{"fact":"fact-added","source":"video","tap":{"fact":"step-done","timeKnown":true,"step":5,"lane":2,"seat":"","uncertaintyMs":0,"start":null,"plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.39","instant":1795600841200},"reason":"phone died","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.38","instant":1795600841200}""",
        """{"fact":"warned","lane":2,"reason":"bar dropped","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.40","instant":1795600841200}""",
        """{"fact":"penalised","addMs":30000,"reps":0,"lane":2,"reason":"again","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.41","instant":1795600841200}""",
        """{"fact":"near-tie-decided","lanes":[3,2],"tie":false,"reason":"seen on video","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.46","instant":1795600841200}""",
        """{"fact":"cap-decided","inTime":true,"withinMs":107,"lane":2,"reason":"bar at lock-out","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.47","instant":1795600841200}""",
        """{"fact":"rerun-ordered","lanes":[2],"inHeat":"h9","reason":"floor was wet","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.48","instant":1795600841200}""",
        """{"fact":"disqualified","lane":2,"reason":"left the floor","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.49","instant":1795600841200}""",
        """{"fact":"appeal-filed","member":"Ann","grounds":"two reps not counted","late":true,"lane":2,"reason":"phone was dead","by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.50","instant":1795600841200}""",
        """{"fact":"appeal-decided","outcome":"reps","addMs":0,"reps":-2,"inHeat":null,"target":"Zm9vYmFyYmF6cXV4MTIzNA.50","reason":"seen on video","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.51","instant":1795600841200}""",
        """{"fact":"call-answered","lane":2,"reason":"","by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.42","instant":1795600841200}""",
        """{"fact":"frozen","head":412,"over":"phone of lane 2 is dead","by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.43","instant":1795600841200}""",
        """{"fact":"certified","head":413,"by":{"signIn":"in-head","name":"Hedda","role":"head-judge"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.44","instant":1795600841200}""",
        """{"fact":"reopened","reason":"protest","by":{"signIn":"in-desk","name":"Ona","role":"organiser"},"id":"Zm9vYmFyYmF6cXV4MTIzNA.45","instant":1795600841200}""",
    ];
}
