using System.Globalization;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Pages;

/// <summary>The tape of a lane's strip as it is drawn.</summary>
internal static class Tape
{
    /// <summary>How far the tape is seen, from 0 where the work begins to 1 where it ends; below 0 while nothing is drawn. A roll hides up to half its width of it.</summary>
    private const string Drawn = """
        host => {
          const laid = host.querySelector('.strip-laid')?.style.transform, { offsetWidth: width, offsetHeight: height } = host;
          if (!laid || width < 20) return -1;
          const end = width - height * .16, torn = /^polygon\(-9px 0px, ([\d.]+)px/.exec(host.querySelector('.strip-tape').style.clipPath);
          return (Math.min(end, width + parseFloat(laid.slice('translateX('.length)), torn ? Number(torn[1]) : end) - height) / (end - height);
        }
        """;

    /// <summary>Waits until the tape is as long as this, from 0 to 1, to a part in twenty.</summary>
    public static async Task TapeIs(this ILocator strip, double part)
    {
        await strip.WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Attached });
        var host = await strip.ElementHandleAsync();
        var within = string.Create(CultureInfo.InvariantCulture, $"host => Math.abs(({Drawn})(host) - {part}) < .05");
        try
        {
            await strip.Page.WaitForFunctionAsync(within, host);
        }
        catch (TimeoutException)
        {
            var length = await host.EvaluateAsync<double>(Drawn);
            Assert.Fail(string.Create(CultureInfo.InvariantCulture, $"The tape is {length:0.00} long and not {part}."));
        }
    }
}
