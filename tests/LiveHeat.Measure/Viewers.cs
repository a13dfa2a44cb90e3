using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using LiveHeat.Contracts.Setup;
using LiveHeat.Testing;
using LiveHeat.Testing.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.SignalR;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace LiveHeat.Measure;

/// <summary>From a judge's tap to the forecast of it at many viewers, over the real server and hub on this machine; beside a hub that does nothing but send the same bytes, in the same run.</summary>
internal static class Viewers
{
    private const int Lanes = 20;
    private const int KnownSteps = 4;

    private sealed class BareHub : Hub;

    public static async Task<int> Run(string[] args)
    {
        var viewers = Number(args, "--viewers", 1000);
        var taps = Number(args, "--taps", 40);
        await using var floor = await TestFloor.Open(onPort: true);
        var heat = await Heat(floor);
        byte[] bytes;
        (double Half, double Most, int Lost, int Told) own;
        await using (var crowd = await Crowd.Of(viewers, floor.App.ClientOptions.BaseAddress, Call("1", "Watch", heat.Id), Call("2", "WatchForecast")))
        {
            await Task.Delay(1500);
            bytes = crowd.Any.Last;
            for (var tap = 0; tap < taps; tap++)
            {
                var lane = (tap % Lanes) + 1;
                floor.Time.Advance(TimeSpan.FromSeconds(2));
                await crowd.Time(async () => (await heat[lane].SendOne(heat[lane].Done(KnownSteps + 1 + (tap / Lanes)))).Sequence!.Value);
                await Task.Delay(150);
            }

            own = crowd.Result();
            Console.WriteLine(crowd.Line($"tap to forecast, {viewers} viewers, {Lanes} lanes"));
        }

        var bare = await Bare(viewers, taps, bytes);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"p50 {own.Half / bare.Half:F2} times, p99 {own.Most / bare.Most:F2} times the bare hub's; {bytes.Length} bytes a forecast"));
        return own.Lost == 0 ? 0 : 1;
    }

    /// <summary>Twenty lanes at work, far enough that forecasts are made.</summary>
    private static async Task<TestHeat> Heat(TestFloor floor)
    {
        foreach (var team in Enumerable.Range(TestFloor.Teams, Lanes - TestFloor.Teams + 1))
        {
            var line = Some.Entry(team);
            (await floor.Organiser.Put($"/api/setup/teams/t{team}", new TeamSetup(line.Team, line.Name, line.Division, line.Athletes))).Fine();
        }

        var heat = await floor.Run(Lanes);
        foreach (var step in Enumerable.Range(1, KnownSteps))
        {
            floor.Time.Advance(TimeSpan.FromSeconds(20));
            foreach (var lane in Enumerable.Range(1, Lanes))
            {
                await heat[lane].Finish(step, afterSeconds: 0.3);
            }
        }

        return heat;
    }

    private static async Task<(double Half, double Most, int Lost, int Told)> Bare(int viewers, int times, byte[] record)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.Services.AddSignalR();
        await using var app = builder.Build();
        app.Urls.Add("http://127.0.0.1:0");
        app.UseWebSockets();
        app.MapHub<BareHub>("/hub");
        await app.StartAsync();
        var site = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First() + "/");
        var hub = app.Services.GetRequiredService<IHubContext<BareHub>>();
        var forecast = JsonNode.Parse(record)!["arguments"]![0]!;
        await using var crowd = await Crowd.Of(viewers, site);
        await Task.Delay(1500);
        for (var time = 1; time <= times; time++)
        {
            forecast["sequence"] = 1000 + time;
            var (sequence, same) = (1000 + time, forecast.Deserialize<JsonElement>());
            await crowd.Time(async () =>
            {
                await hub.Clients.All.SendAsync("ForecastReady", same);
                return sequence;
            });
            await Task.Delay(150);
        }

        Console.WriteLine(crowd.Line($"bare hub, {viewers} viewers, the same bytes"));
        await app.StopAsync();
        return crowd.Result();
    }

    private static string Call(string id, string method, params string[] arguments) =>
        JsonSerializer.Serialize(new { type = 1, invocationId = id, target = method, arguments });

    private static int Number(string[] args, string name, int usual) =>
        Array.IndexOf(args, name) is var at and >= 0 && at + 1 < args.Length && int.TryParse(args[at + 1], NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) && number > 0 ? number : usual;
}
