using LiveHeat.Screens.Look;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace LiveHeat.Screens.Replays;

/// <summary>The line in a list of facts where the moment is. The list is kept scrolled so that it stands in the middle.</summary>
public sealed class MomentLine(PageScript page) : ComponentBase
{
    private ElementReference line;
    private string? shown;

    /// <summary>The moment in words: "4:32.0".</summary>
    [Parameter, EditorRequired]
    public required string Moment { get; set; }

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "li");
        builder.AddAttribute(1, "class", "moment");
        builder.AddAttribute(2, "data-act", "moment");
        builder.AddElementReferenceCapture(3, reference => line = reference);
        builder.AddContent(4, Moment);
        builder.CloseElement();
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (shown != Moment)
        {
            shown = Moment;
            await page.Centre(line);
        }
    }
}
