using LiveHeat.Screens;
using LiveHeat.Screens.Look;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using MudBlazor.Services;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
builder.RootComponents.Add<HeadOutlet>("head::after");
builder.Services.AddMudServices();

// The screens stand at /screens/, what they talk to beside them. How long an answer may take, each question says itself.
var server = new Uri(new Uri(builder.HostEnvironment.BaseAddress), "/");
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton(new HttpClient { BaseAddress = server, Timeout = Timeout.InfiniteTimeSpan });
builder.Services.AddScreens(server);

var app = builder.Build();
ScreenLanguage.Choose(await app.Services.GetRequiredService<PageScript>().Language());
await app.RunAsync();
