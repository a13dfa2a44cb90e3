using System.Globalization;
using Serilog;

var builder = WebApplication.CreateBuilder(new WebApplicationOptions
{
    Args = args,
    // The published files stand beside the program, whatever folder it is started from.
    ContentRootPath = AppContext.BaseDirectory,
});
// "dotnet run" outside Development: the screens' and the floor's files are still in their own projects.
builder.WebHost.UseStaticWebAssets();
builder.Services.AddSerilog(log => log.ReadFrom.Configuration(builder.Configuration).WriteTo.Console(formatProvider: CultureInfo.InvariantCulture));
builder.Services.AddOpenApi();

var app = builder.Build();

app.MapOpenApi();
app.MapStaticAssets();
app.MapFallbackToFile("/screens/{*path:nonfile}", "screens/index.html");
app.MapGet("/", () => "The hub is running.");

await app.RunAsync();
