using System.Collections.Concurrent;
using LiveHeat.Engine.Heats;
using Microsoft.AspNetCore.SignalR;

namespace LiveHeat.Server.Hubs;

/// <summary>All connections of this server, and what each of them watches.</summary>
internal sealed class Viewers(IHubContext<HeatHub> hub, ILogger<Viewers> log)
{
    private readonly ConcurrentDictionary<string, Viewer> viewers = new();

    /// <summary>How many connections there are.</summary>
    public int Count => viewers.Count;

    /// <summary>A connection opened.</summary>
    /// <param name="connection">Its id.</param>
    /// <param name="hangUp">Ends it: a screen that gets nothing more must come back, not look alive.</param>
    public void Enter(string connection, Action hangUp)
    {
        var viewer = new Viewer(connection, (id, method, arguments) => hub.Clients.Client(id).SendCoreAsync(method, arguments));
        viewers[connection] = viewer;
        _ = Pump(viewer, hangUp);
    }

    /// <summary>A connection closed.</summary>
    public void Leave(string connection)
    {
        if (viewers.TryRemove(connection, out var viewer))
        {
            viewer.Leave();
        }
    }

    /// <summary>A connection watches one heat from now on; null: the current one.</summary>
    public void Watch(string connection, HeatId? heat)
    {
        if (viewers.TryGetValue(connection, out var viewer))
        {
            viewer.Heat = heat;
            viewer.Watching = true;
        }
    }

    /// <summary>The heat a connection watches; null: the current one.</summary>
    public HeatId? HeatOf(string connection) => viewers.TryGetValue(connection, out var viewer) ? viewer.Heat : null;

    /// <summary>A connection watches the phones from now on.</summary>
    public void WatchPhones(string connection)
    {
        if (viewers.TryGetValue(connection, out var viewer))
        {
            viewer.WatchesPhones = true;
        }
    }

    /// <summary>A connection watches the forecast of its heat from now on.</summary>
    public void WatchForecast(string connection)
    {
        if (viewers.TryGetValue(connection, out var viewer))
        {
            viewer.WatchesForecast = true;
        }
    }

    /// <summary>A frame for everybody who watches its heat.</summary>
    public void Offer(HeatId heat, bool isCurrent, RawJson frame)
    {
        foreach (var viewer in Watching(heat, isCurrent))
        {
            viewer.OfferFrame(frame);
        }
    }

    /// <summary>A forecast for those who watch it; it is made once, and only when there is somebody.</summary>
    public void OfferForecast(HeatId heat, bool isCurrent, Func<RawJson> make)
    {
        RawJson? forecast = null;
        foreach (var viewer in Watching(heat, isCurrent).Where(viewer => viewer.WatchesForecast))
        {
            viewer.OfferForecast(forecast ??= make());
        }
    }

    /// <summary>The list of heats changed, for everybody.</summary>
    public void OfferProgram()
    {
        foreach (var viewer in viewers.Values)
        {
            viewer.OfferProgram();
        }
    }

    /// <summary>The phones, for everybody who watches them.</summary>
    public void OfferPhones(RawJson phones)
    {
        foreach (var viewer in viewers.Values.Where(viewer => viewer.WatchesPhones))
        {
            viewer.OfferPhones(phones);
        }
    }

    private IEnumerable<Viewer> Watching(HeatId heat, bool isCurrent) =>
        viewers.Values.Where(viewer => viewer.Watching && (viewer.Heat is { } watched ? watched == heat : isCurrent));

    private async Task Pump(Viewer viewer, Action hangUp)
    {
        try
        {
            await viewer.Pump();
        }
        catch (Exception wrong)
        {
            log.LogError(wrong, "A push failed; the screen has to connect again");
            hangUp();
        }
    }
}
