using System.Globalization;
using System.Text.RegularExpressions;

namespace LiveHeat.Browser.Floor;

/// <summary>
/// What a strip tells by its colours stands out from what it lies on, at 3:1 or more (WCAG 2.2, success criterion 1.4.11 Non-text Contrast), on both grounds. Ratio and
/// relative luminance are those of WCAG 2.2.
/// </summary>
public sealed partial class StripContrastTests
{
    /// <summary>Chalk dashes are an estimate, drawn fainter as a whole (FAINT in strip/paint.js).</summary>
    private const double Dash = 0.7;

    [Theory]
    [InlineData("dark")]
    [InlineData("light")]
    public void Every_tape_and_the_chalk_stand_out_from_the_floor_of_the_lane(string ground)
    {
        var colours = Colours(ground);
        var floor = colours["--lane-floor"];
        var tapes = colours.Where(colour => colour.Key.StartsWith("--tape-", StringComparison.Ordinal)).ToArray();
        var dash = colours["--lane-chalk"].Zip(floor, (chalk, under) => (chalk * Dash) + (under * (1 - Dash))).ToArray();
        Assert.Equal(6, tapes.Length);
        Assert.Empty(tapes.Append(new("chalk dashes", dash)).Where(colour => Ratio(colour.Value, floor) < 3).Select(colour => $"{colour.Key} on {ground}: {Ratio(colour.Value, floor):F2}"));
    }

    /// <summary>The measure itself: #767676 on white is 4.54 (from memory of what is published).</summary>
    [Fact]
    public void The_ratio_is_as_published() => Assert.Equal(4.54, Math.Round(Ratio([0x76, 0x76, 0x76], [255, 255, 255]), 2));

    /// <summary>A light ground writes over what the dark one has.</summary>
    private static Dictionary<string, double[]> Colours(string ground)
    {
        var here = AppContext.BaseDirectory;
        var css = File.ReadAllText(Path.Combine(here[..here.IndexOf(".artifacts", StringComparison.Ordinal)], "src/LiveHeat.Floor/wwwroot/floor/floor.css"));
        var blocks = Root().Matches(css).Where(block => block.Groups["ground"].Value is var of && (of.Length == 0 || of == ground)).ToArray();
        Assert.Equal(ground == "light" ? 2 : 1, blocks.Length);
        var colours = new Dictionary<string, double[]>();
        foreach (var colour in blocks.SelectMany(block => Colour().Matches(block.Groups["body"].Value)))
        {
            colours[colour.Groups["name"].Value] = [.. Enumerable.Range(0, 3).Select(at => (double)int.Parse(colour.Groups["value"].Value.AsSpan(at * 2, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture))];
        }

        return colours;
    }

    private static double Ratio(double[] one, double[] other)
    {
        var (high, low) = (Math.Max(Luminance(one), Luminance(other)), Math.Min(Luminance(one), Luminance(other)));
        return (high + 0.05) / (low + 0.05);
    }

    private static double Luminance(double[] colour)
    {
        var linear = colour.Select(value => value / 255).Select(value => value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4)).ToArray();
        return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
    }

    [GeneratedRegex("""^:root(?:\[data-ground='(?<ground>\w+)'\])?[^{]*\{(?<body>[^}]*)\}""", RegexOptions.Multiline)]
    private static partial Regex Root();

    [GeneratedRegex("(?<name>--[a-z0-9-]+): #(?<value>[0-9a-f]{6});")]
    private static partial Regex Colour();
}
