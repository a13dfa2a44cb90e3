using System.Globalization;
using LiveHeat.Server.Files;
using Serilog;

var builder = WebApplication.CreateBuilder(new WebApplicationOptions
{
    Args = args,
    // The published files stand beside the program, whatever folder it is started from.
    ContentRootPath = AppContext.BaseDirectory,
});
// Without it "dotnet run" outside Development does not find the files of the other projects.
builder.WebHost.UseStaticWebAssets();
builder.Services.AddSerilog(log => log
    .ReadFrom.Configuration(builder.Configuration)
    .WriteTo.Console(formatProvider: CultureInfo.InvariantCulture));
builder.Services.AddOpenApi();

var app = builder.Build();

app.MapOpenApi();
app.MapServedFiles();
app.MapGet("/", () => "The hub is running.");

await app.RunAsync();
