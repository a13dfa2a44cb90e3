namespace LiveHeat.Engine.Wire;

/// <summary>Every command as text, to the letter.</summary>
internal static class CommandPins
{
    public static readonly IReadOnlyList<string> All =
    [
        """{"command":"call","id":"Zm9vYmFyYmF6cXV4MTIzNA.1"}""",
        """{"command":"replace-call","id":"Zm9vYmFyYmF6cXV4MTIzNA.2"}""",
        """{"command":"take-seat","duty":"witness","lane":2,"reason":"","id":"Zm9vYmFyYmF6cXV4MTIzNA.3"}""",
        """{"command":"give-up-seat","seat":"s-2","lane":2,"reason":"","id":"Zm9vYmFyYmF6cXV4MTIzNA.4"}""",
        """{"command":"ready","seat":"s-2","lane":2,"reason":"","id":"Zm9vYmFyYmF6cXV4MTIzNA.5"}""",
        """{"command":"override-ready","lanes":[2,3],"reason":"phones in hand","id":"Zm9vYmFyYmF6cXV4MTIzNA.6"}""",
        """{"command":"withdraw-lane","lane":2,"reason":"not here","id":"Zm9vYmFyYmF6cXV4MTIzNA.7"}""",
        """{"command":"schedule-start","inMs":10000,"id":"Zm9vYmFyYmF6cXV4MTIzNA.8"}""",
        """{"command":"observe-start","goAt":1795600841200,"agoMs":0,"uncertaintyMs":500,"start":"k7f3","reason":"seen on video","id":"Zm9vYmFyYmF6cXV4MTIzNA.9"}""",
        """{"command":"recall-start","reason":"false start","id":"Zm9vYmFyYmF6cXV4MTIzNA.10"}""",
        """{"command":"halt","reason":"fire alarm","id":"Zm9vYmFyYmF6cXV4MTIzNA.11"}""",
        """{"command":"resume","reason":"all clear","id":"Zm9vYmFyYmF6cXV4MTIzNA.12"}""",
        """{"command":"return-to-call","reason":"start again","id":"Zm9vYmFyYmF6cXV4MTIzNA.13"}""",
        """{"command":"end","reason":"cap","id":"Zm9vYmFyYmF6cXV4MTIzNA.14"}""",
        """{"command":"send-back","step":4,"lane":2,"reason":"skipped a set","id":"Zm9vYmFyYmF6cXV4MTIzNA.15"}""",
        """{"command":"owe-reps","step":4,"reps":2,"lane":2,"reason":"two short","id":"Zm9vYmFyYmF6cXV4MTIzNA.16"}""",
        """{"command":"hold-lane","movesCap":false,"lane":2,"reason":"rower broke","id":"Zm9vYmFyYmF6cXV4MTIzNA.17"}""",
        """{"command":"resume-lane","lane":2,"reason":"rower changed","id":"Zm9vYmFyYmF6cXV4MTIzNA.18"}""",
        """{"command":"adjust-time","adjustMs":-12000,"movesCap":true,"lane":2,"reason":"blocked by a judge","id":"Zm9vYmFyYmF6cXV4MTIzNA.19"}""",
        """{"command":"change-line-up","fromStep":4,"athletes":["Ann","Bo","Dot"],"lane":2,"reason":"injury","id":"Zm9vYmFyYmF6cXV4MTIzNA.20"}""",
        """{"command":"take-variant","fromStep":4,"prescription":"scaled","lane":2,"reason":"asked for it","id":"Zm9vYmFyYmF6cXV4MTIzNA.21"}""",
        """{"command":"void","target":"Zm9vYmFyYmF6cXV4MTIzNA.1","reason":"wrong lane","id":"Zm9vYmFyYmF6cXV4MTIzNA.22"}""",
        """{"command":"admit","target":"Zm9vYmFyYmF6cXV4MTIzNA.1","reason":"seen","id":"Zm9vYmFyYmF6cXV4MTIzNA.23"}""",
        """{"command":"give-reason","target":"Zm9vYmFyYmF6cXV4MTIzNA.30","reason":"chain came off","id":"Zm9vYmFyYmF6cXV4MTIzNA.24"}""",
        """{"command":"add","source":"paper","tap":{"fact":"tag-made","timeKnown":true,"step":3,"lane":2,"seat":"","uncertaintyMs":0,"start":null,"plan":1,"phone":null,"id":"Zm9vYmFyYmF6cXV4MTIzNA.26","instant":1795600841200},"reason":"phone died","id":"Zm9vYmFyYmF6cXV4MTIzNA.25"}""",
        """{"command":"warn","lane":2,"reason":"bar dropped","id":"Zm9vYmFyYmF6cXV4MTIzNA.27"}""",
        """{"command":"penalise","addMs":30000,"reps":0,"lane":2,"reason":"again","id":"Zm9vYmFyYmF6cXV4MTIzNA.28"}""",
        """{"command":"decide-near-tie","lanes":[3,2],"tie":true,"reason":"seen on video","id":"Zm9vYmFyYmF6cXV4MTIzNA.33"}""",
        """{"command":"decide-cap","inTime":true,"lane":2,"reason":"bar at lock-out","id":"Zm9vYmFyYmF6cXV4MTIzNA.34"}""",
        """{"command":"order-rerun","lanes":[2],"inHeat":"h9","reason":"floor was wet","id":"Zm9vYmFyYmF6cXV4MTIzNA.35"}""",
        """{"command":"disqualify","lane":2,"reason":"left the floor","id":"Zm9vYmFyYmF6cXV4MTIzNA.36"}""",
        """{"command":"file-appeal","member":"Ann","grounds":"two reps not counted","lane":2,"reason":"","id":"Zm9vYmFyYmF6cXV4MTIzNA.37"}""",
        """{"command":"decide-appeal","outcome":"rerun","addMs":0,"reps":0,"inHeat":"h9","target":"Zm9vYmFyYmF6cXV4MTIzNA.50","reason":"wrong weight on the bar","id":"Zm9vYmFyYmF6cXV4MTIzNA.38"}""",
        """{"command":"answer-call","lane":2,"reason":"","id":"Zm9vYmFyYmF6cXV4MTIzNA.29"}""",
        """{"command":"freeze","head":412,"over":"phone of lane 2 is dead","id":"Zm9vYmFyYmF6cXV4MTIzNA.30"}""",
        """{"command":"certify","head":413,"id":"Zm9vYmFyYmF6cXV4MTIzNA.31"}""",
        """{"command":"reopen","reason":"protest","id":"Zm9vYmFyYmF6cXV4MTIzNA.32"}""",
    ];
}
