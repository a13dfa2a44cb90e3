using Microsoft.Playwright;

namespace LiveHeat.Browser.Pages;

/// <summary>A finger on a touch screen, for as long as a test leaves it there.</summary>
internal sealed class Finger : IAsyncDisposable
{
    private readonly ICDPSession screen;
    private readonly List<object> points = [];

    private Finger(ICDPSession screen) => this.screen = screen;

    /// <summary>Puts a finger on the middle of something that can be touched.</summary>
    public static async Task<Finger> Down(ILocator target)
    {
        await target.TapAsync(new LocatorTapOptions { Trial = true });     // only waits until it is there, stands still and is covered by nothing
        var box = (await target.BoundingBoxAsync())!;
        var finger = new Finger(await target.Page.Context.NewCDPSessionAsync(target.Page));
        await finger.Add(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        return finger;
    }

    /// <summary>Puts one more finger down, the first still being there.</summary>
    public Task Add(float x, float y)
    {
        points.Add(new { x, y, id = points.Count });
        return Send("touchStart");
    }

    /// <summary>Lifts all fingers.</summary>
    public async Task Up()
    {
        points.Clear();
        await Send("touchEnd");
    }

    public async ValueTask DisposeAsync()
    {
        if (points.Count > 0)
        {
            await Up();
        }

        await screen.DetachAsync();
    }

    private Task Send(string type) => screen.SendAsync("Input.dispatchTouchEvent", new Dictionary<string, object> { ["type"] = type, ["touchPoints"] = points.ToArray() });
}
