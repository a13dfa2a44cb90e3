using System.Globalization;
using LiveHeat.Contracts.Language;
using LiveHeat.Screens;
using LiveHeat.Screens.Look;
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
using var client = new HttpClient { BaseAddress = server, Timeout = Timeout.InfiniteTimeSpan };
builder.Services.AddSingleton(client);
builder.Services.AddScreens(server);

var app = builder.Build();

// All words from now on, those of the server's answers too, and what a screen reader takes the page for.
var page = app.Services.GetRequiredService<PageScript>();
Tongue.Speak((await page.Languages()).FirstOrDefault(wish => Tongue.Known(wish) is not null));
CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.CurrentUICulture;
client.DefaultRequestHeaders.AcceptLanguage.ParseAdd(Tongue.Current);
await page.SetLanguage(Tongue.Current);
await app.RunAsync();
