using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Forecasts;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Connection;

/// <summary>Fills the stores from hub and HTTP, so that the stores need to know neither.</summary>
public sealed class Feed(HeatConnection connection, HeatApi api, HeatStore heat, ForecastStore forecast, ProgramStore program, SignInStore signIn)
{
    private const int SheetTries = 3;
    private bool started;
    private bool readingSheet;

    /// <summary>Reads who is signed in and begins to listen. A second call does nothing.</summary>
    public async Task Start()
    {
        if (started)
        {
            return;
        }

        started = true;
        connection.FrameArrived += frame =>
        {
            heat.Take(frame);
            _ = ReadSheet();
        };
        connection.ForecastArrived += forecast.Take;
        connection.PhonesArrived += heat.Take;
        connection.StateChanged += heat.Take;
        connection.StateChanged += state => _ = state == LinkState.Online && signIn.Me is null ? ReadMe() : Task.CompletedTask;
        connection.ProgramChanged += () => _ = ReadProgram();
        await Task.WhenAll(ReadMe(), ReadProgram());
        connection.Start();
    }

    /// <summary>Who signs in or out is somebody else to the hub too.</summary>
    public async Task SignedInAnew()
    {
        await ReadMe();
        connection.Reconnect();
    }

    /// <summary>Follows one heat, or the current one.</summary>
    public async Task Follow(string id)
    {
        heat.Follow(id);
        await connection.Watch(id);
        if (connection.State == LinkState.Online && heat.Frame is null)
        {
            heat.TakeNothing();
        }

        if (signIn.MayRule)
        {
            await connection.WatchPhones();
        }
    }

    /// <summary>The forecast of the heat followed too, from now on.</summary>
    public Task FollowForecast() => connection.WatchForecast();

    /// <summary>Reads the list of heats.</summary>
    public async Task ReadProgram() => program.Take(await api.Program());

    private async Task ReadMe() => signIn.Take(await api.Me());

    private async Task ReadSheet()
    {
        if (readingSheet)
        {
            return;
        }

        readingSheet = true;
        try
        {
            // Again when the next one was made meanwhile; a problem waits for the next frame.
            for (var tries = 0; tries < SheetTries && heat.NeedsSheet && heat.Frame is { } frame; tries++)
            {
                if ((await api.Sheet(frame.Heat)).Value is { } sheet)
                {
                    heat.Take(sheet);
                }
            }
        }
        finally
        {
            readingSheet = false;
        }
    }
}
