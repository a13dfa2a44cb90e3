using LiveHeat.Browser.Halls;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Floor;

/// <summary>A test of a JavaScript module as the server serves it, in a real browser, on a page that has nothing else on it.</summary>
public abstract class ModuleTest(Hall hall) : HallTest(hall)
{
    /// <summary>Runs a function that gets the modules' exports and an argument.</summary>
    /// <param name="modules">Their addresses, such as <c>/pad/steps.js</c>.</param>
    /// <param name="function">JavaScript: <c>([steps], argument) => ...</c></param>
    private protected async Task<T> Run<T>(string[] modules, string function, object? argument = null)
    {
        var page = await Hall.QuietPage();
        return await page.EvaluateAsync<T>(
            $"async ([modules, argument]) => ({function})(await Promise.all(modules.map(module => import(module))), argument)", new[] { modules, argument });
    }
}
