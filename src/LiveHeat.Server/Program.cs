using LiveHeat.Server.Hosting;

return await Commands.Run(args);

/// <summary>Named so that tests can start the real host.</summary>
public partial class Program;
