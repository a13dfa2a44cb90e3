namespace LiveHeat.Measure;

internal static class Measurements
{
    private static int Main()
    {
        Console.Error.WriteLine("There is nothing to measure yet.");
        return 1;
    }
}
