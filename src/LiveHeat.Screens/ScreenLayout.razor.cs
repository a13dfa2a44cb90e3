using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Look;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens;

/// <summary>Around every page: the theme, MudBlazor's providers, and the feed that fills the stores.</summary>
public sealed partial class ScreenLayout(Feed feed, HeatConnection connection, PageScript page) : LayoutComponentBase, IDisposable
{
    private bool light;

    /// <inheritdoc/>
    public void Dispose() => page.Back -= connection.Reconnect;

    /// <summary>Dark rubber, or light for daylight and paper.</summary>
    public async Task TurnGround()
    {
        light = !light;
        await page.SetGround(light);
        StateHasChanged();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        page.Back += connection.Reconnect;
        light = await page.IsLight();
        await page.SetGround(light);
        await page.Listen();
        await feed.Start();
    }
}
