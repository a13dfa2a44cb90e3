using LiveHeat.Contracts.Library;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Library;

public sealed class LibraryEndpointsTests(SharedApp shared) : IClassFixture<SharedApp>
{
    [Theory]
    [InlineData("/api/library")]
    [InlineData("/api/library?language=en")]
    [InlineData("/api/library?language=xx")]
    public async Task Anybody_reads_the_library(string path)
    {
        using var visitor = new Visitor(shared.App);

        var library = (await visitor.Get(path)).Read<MovementLibrary>();

        Assert.Equal("en", library.Language);
        Assert.Equal(LibraryFiles.In("en"), library);
    }

    [Fact]
    public async Task It_is_sent_again_only_when_it_changed()
    {
        using var visitor = new Visitor(shared.App);
        var first = (await visitor.Get("/api/library")).Fine();

        var again = await visitor.Get("/api/library", ("If-None-Match", first.Message.Headers.ETag!.ToString()));

        Assert.Equal((304, ""), (again.Status, again.Text));
        Assert.Equal("no-cache", first.Message.Headers.CacheControl!.ToString());
        Assert.Equal(200, (await visitor.Get("/api/library", ("If-None-Match", "\"other\""))).Status);
    }
}
