using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LiveHeat.Screens.Look;

/// <summary>The browser's own things: ground, printing, coming back from the background.</summary>
public sealed class PageScript(IJSRuntime script) : IAsyncDisposable
{
    private Task<IJSObjectReference>? module;
    private DotNetObjectReference<PageScript>? here;

    /// <summary>The page was away, or the device found a network again.</summary>
    public event Action? Back;

    /// <summary>A key of a player was pressed where nobody writes: its name, and whether shift was held.</summary>
    public event Action<string, bool>? Key;

    /// <summary>The languages that are wished for, dearest first, such as "de-AT": that of the address (<c>?lang=</c>), then those of the device.</summary>
    public async Task<string[]> Languages() => await (await Module()).InvokeAsync<string[]>("languages");

    /// <summary>Tells the browser, and through it screen readers, what language the page is in.</summary>
    public async Task SetLanguage(string language) => await (await Module()).InvokeVoidAsync("setLanguage", language);

    /// <summary>Whether this device keeps the light ground.</summary>
    public async Task<bool> IsLight() => await (await Module()).InvokeAsync<string>("ground") == "light";

    /// <summary>Keeps the ground for this device.</summary>
    public async Task SetGround(bool light) => await (await Module()).InvokeVoidAsync("setGround", light ? "light" : "dark");

    /// <summary>A list that this tab keeps, over reloads too; empty when it keeps none.</summary>
    public async Task<string[]> Kept(string name) => await (await Module()).InvokeAsync<string[]?>("kept", name) ?? [];

    /// <summary>Keeps a list for this tab.</summary>
    public async Task Keep(string name, string[] list) => await (await Module()).InvokeVoidAsync("keep", name, list);

    /// <summary>Opens the browser's print dialog.</summary>
    public async Task Print() => await (await Module()).InvokeVoidAsync("print");

    /// <summary>Scrolls the nearest list that scrolls so that the element stands in its middle; the page itself stays.</summary>
    public async Task Centre(ElementReference element) => await (await Module()).InvokeVoidAsync("centre", element);

    /// <summary>Begins to listen for <see cref="Back"/>.</summary>
    public async Task Listen() => await (await Module()).InvokeVoidAsync("onReturn", here ??= DotNetObjectReference.Create(this));

    /// <summary>Begins to listen for <see cref="Key"/>, or ends.</summary>
    public async Task ListenToKeys(bool wanted) =>
        await (await Module()).InvokeVoidAsync("onKeys", wanted ? here ??= DotNetObjectReference.Create(this) : null);

    /// <summary>Called by the page.</summary>
    [JSInvokable]
    public void Pressed(string key, bool shift) => Key?.Invoke(key, shift);

    /// <summary>Called by the page.</summary>
    [JSInvokable]
    public void Returned() => Back?.Invoke();

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        here?.Dispose();
        if (module is not null)
        {
            await (await module).DisposeAsync();
        }
    }

    private Task<IJSObjectReference> Module() => module ??= script.InvokeAsync<IJSObjectReference>("import", "./page.js").AsTask();
}
