using LiveHeat.Contracts.Language;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Announcer;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Desk;
using LiveHeat.Screens.Forecasts;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Introductions;
using LiveHeat.Screens.Judging;
using LiveHeat.Screens.Look;
using LiveHeat.Screens.Replays;
using LiveHeat.Screens.Setup;

namespace LiveHeat.Screens;

/// <summary>All that pages are given: stores, what fills them, and what goes out.</summary>
public static class ScreenServices
{
    /// <summary>Adds them; an <see cref="HttpClient"/>, a <see cref="TimeProvider"/> and the browser's script are to be there.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="server">The server's address, with a slash at the end.</param>
    public static IServiceCollection AddScreens(this IServiceCollection services, Uri server) => services
        .AddSingleton<CommandIds>()
        .AddSingleton<HeatApi>()
        .AddSingleton<ServerClock>()
        .AddSingleton(provider => ActivatorUtilities.CreateInstance<HeatConnection>(provider, new Uri(server, $"hub?lang={Tongue.Current}")))
        .AddSingleton<HeatStore>()
        .AddSingleton<ForecastStore>()
        .AddSingleton<SaidStore>()
        .AddSingleton<IntroductionStore>()
        .AddSingleton<ProgramStore>()
        .AddSingleton<SignInStore>()
        .AddSingleton<Feed>()
        .AddSingleton<FactStore>()
        .AddSingleton<FactFeed>()
        .AddSingleton<ResultStore>()
        .AddSingleton<ResultFeed>()
        .AddSingleton<JudgingStore>()
        .AddSingleton<JudgingFeed>()
        .AddSingleton<JudgesStore>()
        .AddSingleton<JudgesFeed>()
        .AddTransient(MakeReplay)
        .AddSingleton<DeskView>()
        .AddSingleton<CalloutWords>()
        .AddSingleton<AnnouncerView>()
        .AddSingleton<HeatCommands>()
        .AddSingleton<SigningIn>()
        .AddSingleton<SetupStore>()
        .AddSingleton<SetupEditing>()
        .AddSingleton<PageScript>();

    /// <summary>Each page plays a heat of its own: one that is leaving must not end what the next has begun.</summary>
    private static ReplayFeed MakeReplay(IServiceProvider provider) =>
        ActivatorUtilities.CreateInstance<ReplayFeed>(provider, ActivatorUtilities.CreateInstance<ReplayStore>(provider));
}
