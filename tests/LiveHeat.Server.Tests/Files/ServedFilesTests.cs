using System.Net;
using System.Runtime.CompilerServices;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Files;

public sealed class ServedFilesTests(SharedApp shared) : IClassFixture<SharedApp>
{
    [Theory]
    [InlineData("LiveHeat.Floor", "/")]
    [InlineData("LiveHeat.Screens", "/screens/")]
    public async Task Every_file_of_a_project_is_at_the_address_of_its_folder(string project, string under)
    {
        var client = shared.App.CreateClient();
        var root = Path.Combine(Sources(), project, "wwwroot");
        var files = Directory.GetFiles(root, "*", SearchOption.AllDirectories);

        Assert.NotEmpty(files);
        foreach (var file in files)
        {
            var address = under + Path.GetRelativePath(root, file).Replace('\\', '/');
            using var answer = await client.GetAsync(address);
            Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address} answers {(int)answer.StatusCode}.");
            var served = project == "LiveHeat.Floor" && address.EndsWith(".js", StringComparison.Ordinal)
                ? System.Text.Encoding.UTF8.GetBytes(FloorScripts.WithoutComments(await File.ReadAllTextAsync(file)))
                : await File.ReadAllBytesAsync(file);
            Assert.Equal(served, await answer.Content.ReadAsByteArrayAsync());
            Assert.True(answer.Headers.CacheControl?.NoCache, $"{address} may be kept by a browser without asking.");
        }
    }

    [Theory]
    [InlineData("/screens")]
    [InlineData("/screens/")]
    [InlineData("/screens/desk/heat-3")]
    public async Task An_address_inside_the_screens_gives_their_start_page(string address)
    {
        using var answer = await shared.App.CreateClient().GetAsync(address);

        Assert.Equal("text/html", answer.Content.Headers.ContentType?.MediaType);
        Assert.Contains("<base href=\"/screens/\">", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.True(answer.Headers.CacheControl?.NoCache);
    }

    [Theory]
    [InlineData("/screens/nothing.js")]
    [InlineData("/floor/nothing.js")]
    public async Task A_file_that_is_not_there_is_not_found(string address)
    {
        using var answer = await shared.App.CreateClient().GetAsync(address);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Theory]
    [InlineData("/screens/_framework/blazor.webassembly.js", "text/javascript")]
    [InlineData("/screens/_framework/dotnet.js", "text/javascript")]
    [InlineData("/_content/MudBlazor/MudBlazor.min.css", "text/css")]
    [InlineData("/_content/MudBlazor/MudBlazor.min.js", "text/javascript")]
    public async Task What_the_screens_need_to_start_is_served(string address, string type)
    {
        using var answer = await shared.App.CreateClient().GetAsync(address);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType?.MediaType);
    }

    private static string Sources([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "src"));
}
