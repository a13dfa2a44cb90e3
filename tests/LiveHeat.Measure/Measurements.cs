namespace LiveHeat.Measure;

/// <summary>Speed and safety as commands that print figures.</summary>
internal static class Measurements
{
    private const string Help =
        """
        torture   phones tap through a failing network on a server that is killed again and again; ends with lost=0 or fails
                    --kills N   SIGKILLs of the server (default 20)
                    --cuts N    cut connections (default 200)
                    --lanes N   phones (default 4)
                    --seed N    another run
        fold      one more fact of a heat folded, ordered and made a frame, against reading it from JSON; fails above the budget of 50 microseconds
                    --lanes N   lanes (default 20)
                    --times N   heats played, the first third to warm up (default 60)
        forecast  forecasts on simulated heats whose truth is known: how often the 80 % interval holds, Brier scores beside two simpler rules, and time;
                  fails when a simpler rule is better, or above the budget of 2 ms for 20 lanes
                    --halls N   pairs of heats (default 200)
                    --replay FILE...  on exported heats or folders of them instead, each played again as it was known
                    --seed N    other heats
        simulate  heats made from numbers, phones and network full of faults on a clock of their own; each must come to what it comes to without faults
                    --seeds N   how many (default 1000)
                    --from N    the first number (default 1)
                    --seed N    this one alone
        strip     a board whose lanes work, in Chromium at 1920x1080: pictures drawn and dropped, beside a page with nothing on it
                    --lanes N   lanes (default 20)
                    --seconds N how long (default 20)
        viewers   from a tap to its forecast at many viewers, over a real server and hub on this machine, beside a hub that does nothing but send the same bytes
                    --viewers N connections (default 1000)
                    --taps N    taps (default 40)
        """;

    private static async Task<int> Main(string[] args)
    {
        switch (args.FirstOrDefault())
        {
            case "torture":
                return await Torture.Run(args[1..]);
            case "fold":
                return Fold.Run(args[1..]);
            case "forecast":
                return Forecasts.Run(args[1..]);
            case "simulate":
                return await Simulate.Run(args[1..]);
            case "strip":
                return await Strip.Run(args[1..]);
            case "viewers":
                return await Viewers.Run(args[1..]);
            default:
                Console.WriteLine(Help);
                return args.Length == 0 ? 0 : 2;
        }
    }
}
