using LiveHeat.Screens;
using LiveHeat.Screens.Access;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Desk;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Look;
using LiveHeat.Screens.Setup;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using MudBlazor.Services;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
builder.RootComponents.Add<HeadOutlet>("head::after");
builder.Services.AddMudServices();

// The screens stand at /screens/, what they talk to beside them.
var server = new Uri(new Uri(builder.HostEnvironment.BaseAddress), "/");
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton(new HttpClient { BaseAddress = server, Timeout = TimeSpan.FromSeconds(5) });
builder.Services.AddSingleton<CommandIds>();
builder.Services.AddSingleton<HeatApi>();
builder.Services.AddSingleton<ServerClock>();
builder.Services.AddSingleton(services => ActivatorUtilities.CreateInstance<HeatConnection>(services, new Uri(server, "hub")));
builder.Services.AddSingleton<HeatStore>();
builder.Services.AddSingleton<ProgramStore>();
builder.Services.AddSingleton<SignInStore>();
builder.Services.AddSingleton<Feed>();
builder.Services.AddSingleton<FactStore>();
builder.Services.AddSingleton<FactFeed>();
builder.Services.AddSingleton<ResultStore>();
builder.Services.AddSingleton<ResultFeed>();
builder.Services.AddSingleton<DeskView>();
builder.Services.AddSingleton<HeatCommands>();
builder.Services.AddSingleton<SigningIn>();
builder.Services.AddSingleton<SetupStore>();
builder.Services.AddSingleton<SetupEditing>();
builder.Services.AddSingleton<PageScript>();

await builder.Build().RunAsync();
