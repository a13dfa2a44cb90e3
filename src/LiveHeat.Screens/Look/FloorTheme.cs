using MudBlazor;

namespace LiveHeat.Screens.Look;

/// <summary>Rubber, tape and chalk for MudBlazor's controls. The same colours stand in floor.css for everything else.</summary>
public static class FloorTheme
{
    private const string Rubber = "#141517";
    private const string Mat = "#1d1f22";
    private const string Chalk = "#f2efe6";
    private const string ChalkDim = "#b9b6ad";
    private const string Ink = "#121110";
    private const string Paper = "#eceae4";
    private const string Sheet = "#f7f5f0";
    private const string InkDim = "#4a4843";
    private static readonly string[] Type = ["Floor", "Roboto Condensed", "Liberation Sans Narrow", "Arial Narrow", "system-ui", "sans-serif"];

    /// <summary>Both grounds.</summary>
    public static readonly MudTheme Theme = new()
    {
        PaletteDark = new PaletteDark
        {
            Primary = Chalk,
            PrimaryContrastText = Ink,
            Secondary = "#62b6f7",
            SecondaryContrastText = Ink,
            Success = "#37c48b",
            SuccessContrastText = Ink,
            Warning = "#f4dc3c",
            WarningContrastText = Ink,
            Error = "#ff9d6b",
            ErrorContrastText = Ink,
            Info = "#62b6f7",
            InfoContrastText = Ink,
            Background = Rubber,
            BackgroundGray = "#0b0c0d",
            Surface = Mat,
            TextPrimary = Chalk,
            TextSecondary = ChalkDim,
            TextDisabled = "#85827b",
            ActionDefault = Chalk,
            ActionDisabled = "#85827b",
            ActionDisabledBackground = "#2a2c30",
            LinesDefault = "#3a3c41",
            LinesInputs = "#7d7b75",
            Divider = "#3a3c41",
            TableLines = "#3a3c41",
            Dark = Rubber,
        },
        PaletteLight = new PaletteLight
        {
            Primary = "#1b1a18",
            PrimaryContrastText = Sheet,
            Secondary = "#1a5f96",
            SecondaryContrastText = Sheet,
            Success = "#0b6b45",
            SuccessContrastText = Sheet,
            Warning = "#7a5c00",
            WarningContrastText = Sheet,
            Error = "#a33a00",
            ErrorContrastText = Sheet,
            Info = "#1a5f96",
            InfoContrastText = Sheet,
            Background = Paper,
            BackgroundGray = "#dcd9d0",
            Surface = Sheet,
            TextPrimary = "#1b1a18",
            TextSecondary = InkDim,
            TextDisabled = "#77746c",
            ActionDefault = "#1b1a18",
            ActionDisabled = "#77746c",
            ActionDisabledBackground = "#d3d0c7",
            LinesDefault = "#bab6ab",
            LinesInputs = "#77746c",
            Divider = "#bab6ab",
            TableLines = "#bab6ab",
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "0px" },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = Type, FontSize = "1.125rem", FontWeight = "500", LineHeight = "1.35", LetterSpacing = "normal" },
            H4 = new H4Typography { FontFamily = Type, FontSize = "2rem", FontWeight = "700", LineHeight = "1.1", LetterSpacing = "normal" },
            H5 = new H5Typography { FontFamily = Type, FontSize = "1.5rem", FontWeight = "700", LineHeight = "1.15", LetterSpacing = "normal" },
            H6 = new H6Typography { FontFamily = Type, FontSize = "1.25rem", FontWeight = "700", LineHeight = "1.2", LetterSpacing = "normal" },
            Body1 = new Body1Typography { FontFamily = Type, FontSize = "1.125rem", FontWeight = "500", LineHeight = "1.35", LetterSpacing = "normal" },
            Body2 = new Body2Typography { FontFamily = Type, FontSize = "1rem", FontWeight = "500", LineHeight = "1.35", LetterSpacing = "normal" },
            Subtitle1 = new Subtitle1Typography { FontFamily = Type, FontSize = "1.125rem", FontWeight = "500", LineHeight = "1.4", LetterSpacing = "normal" },
            Caption = new CaptionTypography { FontFamily = Type, FontSize = "0.95rem", FontWeight = "500", LineHeight = "1.3", LetterSpacing = "normal" },
            Button = new ButtonTypography { FontFamily = Type, FontSize = "1.125rem", FontWeight = "700", LineHeight = "1.3", LetterSpacing = "normal", TextTransform = "none" },
        },
    };
}
