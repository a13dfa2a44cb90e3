using System.Globalization;

namespace LiveHeat.Server.Hosting;

/// <summary>What was typed behind <c>demo</c>.</summary>
/// <param name="Data">The folder; a new one among the temporary files when nobody names one.</param>
/// <param name="Urls">Where it listens.</param>
/// <param name="Speed">Times as fast, above 0 up to 200; 1 leaves a lane free.</param>
/// <param name="UntilCertified">Freeze and certify by itself, print the result, stop.</param>
/// <param name="Seed">Another day.</param>
internal sealed record DemoOptions(string Data, string Urls, double Speed, bool UntilCertified, int Seed)
{
    private const double Fastest = 200;

    /// <summary>The options, or a sentence that says what is wrong.</summary>
    public static (DemoOptions? Options, string? Wrong) Read(string[] args)
    {
        var (data, urls, speed, until, seed) = ((string?)null, ServeOptions.DefaultUrls, 1.0, false, 7);
        for (var i = 0; i < args.Length; i++)
        {
            var value = i + 1 < args.Length ? args[i + 1] : null;
            switch (args[i])
            {
                case "--until-certified":
                    until = true;
                    continue;
                case "--data" when value is not null:
                    data = value;
                    break;
                case "--urls" when value is not null:
                    urls = value;
                    break;
                case "--speed" when double.TryParse(value, CultureInfo.InvariantCulture, out speed) && speed is > 0 and <= Fastest:
                    break;
                case "--seed" when int.TryParse(value, NumberStyles.Integer, CultureInfo.InvariantCulture, out seed):
                    break;
                default:
                    return (null, $"\"{string.Join(" ", args[i..Math.Min(args.Length, i + 2)])}\" is not understood. --speed takes a number above 0 up to {Fastest}, --seed a whole number.");
            }

            i++;
        }

        return (new DemoOptions(data ?? Directory.CreateTempSubdirectory("relay-demo-").FullName, urls, speed, until, seed), null);
    }
}
